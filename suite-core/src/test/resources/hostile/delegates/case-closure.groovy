switch ('wash') {
    case { new File('marker').createNewFile() }:
        break
}
