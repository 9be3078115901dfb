#include "core/measures/interval.h"
