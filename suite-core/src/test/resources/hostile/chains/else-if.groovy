if (a) { }«4000× else if (a) { }»
