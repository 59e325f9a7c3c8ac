'«80×a»!'.matches('(a|aa)+\\1?c')
