"""What is seen and smelt: of a bin, or of something else."""
