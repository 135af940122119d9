// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/correct_sound_speed.h"

namespace reduction {

double soundSpeedFactor(const soundings::Sounder& sounder,
                        std::optional<units::Temperature> water) {
    if (!water || !sounder.measuresBySound ||
        sounder.assumedSoundSpeed.inMetresPerSecond() <= 0.0) {
        return 1.0;
    }
    return soundSpeedIn(*water) / sounder.assumedSoundSpeed;
}

} // namespace reduction
