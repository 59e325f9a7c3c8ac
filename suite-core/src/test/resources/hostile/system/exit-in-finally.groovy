try {
    throw new IllegalStateException('rinse')
} finally {
    System.exit(3)
}
