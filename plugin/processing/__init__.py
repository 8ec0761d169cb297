"""The Processing provider and its algorithms, one per file."""
