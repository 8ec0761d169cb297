"""The dock: the swim planned beside the map, as it changes."""
