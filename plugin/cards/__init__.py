"""Results on paper and in files: the wet card, GPX and CSV."""
