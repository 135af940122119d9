// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/exit_code.h"

namespace batch {

int exitCodeOf(base::ErrorKind kind) {
    switch (kind) {
    case base::ErrorKind::wrongUse:
        return 2;
    case base::ErrorKind::unusableInput:
        return 3;
    case base::ErrorKind::unwritableOutput:
    case base::ErrorKind::waterInUse:
    case base::ErrorKind::waterChanged:
        return 4;
    case base::ErrorKind::damagedWater:
        return 5;
    case base::ErrorKind::cancelled:
        return 6;
    }
    return 2;
}

} // namespace batch
