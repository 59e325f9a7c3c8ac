@Grab('far:away-variable:1') def passes = 1
