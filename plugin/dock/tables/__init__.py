"""The plan's tables, edited in windows of their own through the edit buffers of their layers."""
