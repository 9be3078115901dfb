namespace afterbeat {}
