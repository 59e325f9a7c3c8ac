record Load(int passes) {
    Load { new File('marker').createNewFile() }
}
new Load(1)
