#include "core/bytes/digest.h"
