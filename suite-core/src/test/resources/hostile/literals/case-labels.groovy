switch (1) {
«1000000×case 1:
»break
}
