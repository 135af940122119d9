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

std::string_view keyOf(base::ErrorKind kind) {
    switch (kind) {
    case base::ErrorKind::wrongUse:
        return "wrong_use";
    case base::ErrorKind::unusableInput:
        return "unusable_input";
    case base::ErrorKind::unwritableOutput:
        return "unwritable_output";
    case base::ErrorKind::waterInUse:
        return "water_in_use";
    case base::ErrorKind::waterChanged:
        return "water_changed";
    case base::ErrorKind::damagedWater:
        return "damaged_water";
    case base::ErrorKind::cancelled:
        return "cancelled";
    }
    return "wrong_use";
}

} // namespace batch
