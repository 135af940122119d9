// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/basis.h"

namespace open_water {

Basis::Basis(std::shared_ptr<const water::Water> water, const water::Derived& derived)
    : water_(std::move(water)), drawn_(derived.drawn), structure_(derived.structure),
      weed_(derived.weed), sections_(derived.sections) {}

bool Basis::holdsFor(const std::shared_ptr<const water::Water>& water,
                     const water::Derived& derived) const {
    if (!water_ || drawn_ != derived.drawn || structure_ != derived.structure ||
        weed_ != derived.weed || sections_ != derived.sections) {
        return false;
    }
    if (water != compared_) {
        // Whole: a member left out of a list of what matters would make an old plan look new.
        isSame_ = water == water_ || *water == *water_;
        compared_ = water;
    }
    return isSame_;
}

} // namespace open_water
