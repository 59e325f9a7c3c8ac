println 'all stages checked, no problems'
