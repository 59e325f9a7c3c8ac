switch ('«80×a»!') {
    case ~/(a|aa)+\1?c/: break
}
