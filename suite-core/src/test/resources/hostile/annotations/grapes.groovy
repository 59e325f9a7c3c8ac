@Grapes([@Grab('far:away-grapes:1'), @Grab('far:away-grapes:2')])
def passes = 1
