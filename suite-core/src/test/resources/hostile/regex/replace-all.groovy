'«80×a»!'.replaceAll('^(a|aa)+\\1?$', '')
