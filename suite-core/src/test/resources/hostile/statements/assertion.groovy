assert false : 'no problems'
