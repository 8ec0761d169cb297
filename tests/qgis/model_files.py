"""Small model files with invented streams, written here by GDAL or as text: meshes and rasters in time."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, timezone
from pathlib import Path

import numpy as np
from osgeo import gdal, osr

Field = Callable[[np.ndarray, np.ndarray, float], tuple[np.ndarray, np.ndarray]]


def ugrid(
    path: Path,
    x: np.ndarray,
    y: np.ndarray,
    faces: np.ndarray,
    times: list[float],
    field: Field,
    *,
    units: str = "hours since 2027-06-05 06:00:00",
    speed_unit: str = "m s-1",
    on_faces: bool = False,
    masked: tuple[int, ...] = (),
    epsg: int | None = None,
) -> Path:
    """A UGRID netCDF of one vector group `stream`; ``faces`` (m, 3 or 4) padded with -1; ``masked`` have no value.

    With ``epsg`` it names its coordinate reference system.
    """
    dataset = gdal.GetDriverByName("netCDF").CreateMultiDimensional(str(path))
    root = dataset.GetRootGroup()
    text, real, whole = (
        gdal.ExtendedDataType.CreateString(),
        gdal.ExtendedDataType.Create(gdal.GDT_Float64),
        gdal.ExtendedDataType.Create(gdal.GDT_Int32),
    )

    def said(array: gdal.MDArray, **values: object) -> None:
        for name, value in values.items():
            kind = text if isinstance(value, str) else whole
            array.CreateAttribute(name, [], kind).Write(value)

    nodes = root.CreateDimension("nNodes", None, None, len(x))
    cells = root.CreateDimension("nFaces", None, None, len(faces))
    width = root.CreateDimension("nMax", None, None, faces.shape[1])
    steps = root.CreateDimension("time", None, None, len(times))
    mesh = root.CreateMDArray("mesh2d", [], whole)
    said(
        mesh,
        cf_role="mesh_topology",
        topology_dimension=2,
        node_coordinates="mesh2d_node_x mesh2d_node_y",
        face_node_connectivity="mesh2d_face_nodes",
        node_dimension="nNodes",
        face_dimension="nFaces",
    )
    for name, values, standard in (("mesh2d_node_x", x, "longitude"), ("mesh2d_node_y", y, "latitude")):
        array = root.CreateMDArray(name, [nodes], real)
        said(array, standard_name=standard, units="degrees")
        array.Write(np.ascontiguousarray(values, dtype=float))
    connectivity = root.CreateMDArray("mesh2d_face_nodes", [cells, width], whole)
    said(connectivity, cf_role="face_node_connectivity", start_index=0)
    connectivity.SetNoDataValueDouble(-999)
    connectivity.Write(np.ascontiguousarray(np.where(faces < 0, -999, faces), dtype=np.int32))
    if epsg:
        said(root.CreateMDArray("projected_coordinate_system", [], whole), epsg=epsg, EPSG_code=f"EPSG:{epsg}")
    time = root.CreateMDArray("time", [steps], real)
    said(time, standard_name="time", units=units)
    time.Write(np.array(times, dtype=float))
    place = (
        (np.where(faces >= 0, x[faces], 0.0).sum(1) / (faces >= 0).sum(1)) if on_faces else x,
        (np.where(faces >= 0, y[faces], 0.0).sum(1) / (faces >= 0).sum(1)) if on_faces else y,
    )
    parts = np.array([field(*place, step) for step in times])
    parts[:, :, list(masked)] = -999.0
    for number, (name, axis) in enumerate((("mesh2d_ucx", "x"), ("mesh2d_ucy", "y"))):
        array = root.CreateMDArray(name, [steps, cells if on_faces else nodes], real)
        said(
            array,
            standard_name=f"sea_water_{axis}_velocity",
            long_name=f"stream, {axis}-component",
            units=speed_unit,
            mesh="mesh2d",
            location="face" if on_faces else "node",
        )
        array.SetNoDataValueDouble(-999.0)
        array.Write(np.ascontiguousarray(parts[:, number]))
    return path


def two_dm(path: Path, x: np.ndarray, y: np.ndarray, faces: np.ndarray) -> Path:
    """A mesh as .2dm text, which names no coordinate reference system."""
    lines = ["MESH2D"]
    for number, face in enumerate(faces.tolist(), start=1):
        corners = [node + 1 for node in face if node >= 0]
        lines.append(" ".join(map(str, ["E3T" if len(corners) == 3 else "E4Q", number, *corners, 1])))
    lines += [f"ND {number} {a!r} {b!r} 0.0" for number, (a, b) in enumerate(zip(x.tolist(), y.tolist()), start=1)]
    path.write_text("\n".join(lines) + "\n", encoding="ascii")
    return path


def dat(
    path: Path, name: str, times_h: list[float], vectors: np.ndarray, n_faces: int, active: np.ndarray | None = None
) -> Path:
    """Vectors (n_times, n_nodes, 2) as .dat text beside a .2dm, and whether its faces (n_times, n_faces) are active."""
    count = vectors.shape[1]
    lines = ["DATASET", 'OBJTYPE "mesh2d"', "BEGVEC", f"ND {count}", f"NC {n_faces}", f'NAME "{name}"', "TIMEUNITS hr"]
    for step, (hour, row) in enumerate(zip(times_h, vectors)):
        lines.append(f"TS {0 if active is None else 1} {hour!r}")
        if active is not None:
            lines += ["1" if one else "0" for one in active[step]]
        lines += [f"{u!r} {v!r}" for u, v in row.tolist()]
    path.write_text("\n".join([*lines, "ENDDS"]) + "\n", encoding="ascii")
    return path


def geotiff(
    path: Path,
    bands: np.ndarray,
    geotransform: tuple[float, ...],
    epsg: int | None,
    *,
    names: list[str] | None = None,
    nodata: float | None = None,
    scale: float | None = None,
    offset: float | None = None,
    unit: str = "m/s",
) -> Path:
    """Bands (n, rows, columns) as a GeoTIFF."""
    count, rows, columns = bands.shape
    kind = gdal.GDT_Int16 if bands.dtype == np.int16 else gdal.GDT_Float64
    dataset = gdal.GetDriverByName("GTiff").Create(str(path), columns, rows, count, kind)
    dataset.SetGeoTransform(geotransform)
    if epsg:
        system = osr.SpatialReference()
        system.ImportFromEPSG(epsg)
        dataset.SetProjection(system.ExportToWkt())
    for number, values in enumerate(bands, start=1):
        band = dataset.GetRasterBand(number)
        band.WriteArray(values)
        band.SetUnitType(unit)
        if names:
            band.SetDescription(names[number - 1])
        if nodata is not None:
            band.SetNoDataValue(nodata)
        if scale is not None:
            band.SetScale(scale)
            band.SetOffset(offset or 0.0)
    dataset = None
    return path


def netcdf_raster(
    path: Path,
    lon: np.ndarray,
    lat: np.ndarray,
    times: list[float],
    east: np.ndarray,
    north: np.ndarray,
    *,
    units: str = "hours since 2027-06-05 06:00:00",
    levels: list[float] | None = None,
) -> Path:
    """`uo` and `vo` (time, lat, lon), or (time, level, lat, lon), packed as 16-bit with scale, offset and filler."""
    dataset = gdal.GetDriverByName("netCDF").CreateMultiDimensional(str(path))
    root = dataset.GetRootGroup()
    text, real = gdal.ExtendedDataType.CreateString(), gdal.ExtendedDataType.Create(gdal.GDT_Float64)
    short = gdal.ExtendedDataType.Create(gdal.GDT_Int16)
    axes = [("time", times, {"units": units, "standard_name": "time", "axis": "T"})]
    if levels:
        axes.append(("depth", levels, {"units": "m", "standard_name": "depth", "positive": "down", "axis": "Z"}))
    axes.append(("lat", lat, {"units": "degrees_north", "standard_name": "latitude", "axis": "Y"}))
    axes.append(("lon", lon, {"units": "degrees_east", "standard_name": "longitude", "axis": "X"}))
    dimensions = []
    for name, values, said in axes:
        dimensions.append(root.CreateDimension(name, None, None, len(values)))
        array = root.CreateMDArray(name, [dimensions[-1]], real)
        for key, value in said.items():
            array.CreateAttribute(key, [], text).Write(value)
        array.Write(np.array(values, dtype=float))
    for name, standard, values in (
        ("uo", "eastward_sea_water_velocity", east),
        ("vo", "northward_sea_water_velocity", north),
    ):
        array = root.CreateMDArray(name, dimensions, short)
        array.CreateAttribute("standard_name", [], text).Write(standard)
        array.SetUnit("m s-1")
        array.CreateAttribute("scale_factor", [], real).Write(0.001)
        array.CreateAttribute("add_offset", [], real).Write(0.5)
        array.SetNoDataValueDouble(-32768)
        packed = np.where(np.isfinite(values), np.round((values - 0.5) / 0.001), -32768)
        array.Write(np.ascontiguousarray(packed, dtype=np.int16))
    return path


def grib(path: Path, lon: np.ndarray, lat: np.ndarray, moments: list[int], parts: np.ndarray) -> Path:
    """Currents (n_times, 2, lat, lon) as GRIB2: discipline 10, category 1, numbers 2 (u) and 3 (v), WMO table 4.2-10-1.

    ``moments`` are seconds since 1970 of each step; latitudes rise.
    """
    with path.open("wb") as whole:
        for moment, pair in zip(moments, parts):
            stamp = datetime.fromtimestamp(moment, timezone.utc)
            for number, values in zip((2, 3), pair):
                made = gdal.GetDriverByName("MEM").Create("", len(lon), len(lat), 1, gdal.GDT_Float32)
                step_x, step_y = lon[1] - lon[0], lat[1] - lat[0]
                made.SetGeoTransform((lon[0] - step_x / 2.0, step_x, 0.0, lat[-1] + step_y / 2.0, 0.0, -step_y))
                system = osr.SpatialReference()
                system.ImportFromEPSG(4326)
                made.SetProjection(system.ExportToWkt())
                made.GetRasterBand(1).WriteArray(values[::-1].astype(np.float32))
                options = [
                    "DISCIPLINE=10",
                    f"IDS_REF_TIME={stamp:%Y-%m-%dT%H:%M:%SZ}",
                    "PDS_PDTN=0",
                    f"PDS_TEMPLATE_ASSEMBLED_VALUES=1 {number} 2 0 96 0 0 1 0 160 0 0 255 0 0",
                    "DATA_ENCODING=IEEE_FLOATING_POINT",
                ]
                message = f"/vsimem/{path.stem}.grb2"
                gdal.GetDriverByName("GRIB").CreateCopy(message, made, options=options)
                size = gdal.VSIStatL(message).size
                handle = gdal.VSIFOpenL(message, "rb")
                whole.write(bytes(gdal.VSIFReadL(1, size, handle)))
                gdal.VSIFCloseL(handle)
                gdal.Unlink(message)
    return path
