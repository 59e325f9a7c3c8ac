enum Load {
    LIGHT
    Load() { new File('marker').createNewFile() }
}
Load.LIGHT
