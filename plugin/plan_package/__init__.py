"""The plan package: one GeoPackage that holds one plan."""
