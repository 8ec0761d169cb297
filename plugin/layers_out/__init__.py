"""Results as map layers, with their styles."""
