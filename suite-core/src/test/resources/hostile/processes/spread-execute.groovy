['touch marker']*.execute()*.waitFor()
