"""Another make beside the open one: what differs, what each difference is worth, and their curves over each other."""
