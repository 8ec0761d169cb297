"""Layers, tables and chart cells on their way into a plan."""
