#include "core/measures/figures.h"
