"""Tools that draw a plan's marks, routes, channels and areas on the map, and measure a leg there."""
