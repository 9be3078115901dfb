#include "core/guideline/profile.h"
