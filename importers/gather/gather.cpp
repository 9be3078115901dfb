#include "importers/gather/gather.h"
