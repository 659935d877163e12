"""What comes of the make: figures with their bands and margins, the verdict, cautions; and the whole check."""
