// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/derived.h"
#include "core/water/stamp.h"

#include <memory>

namespace open_water {

/// What a plan was made from: the stamp of all that it depends on, and the very map. A map drawn
/// afresh of the same water has the same stamp, but its depths may differ by some centimetres.
class Basis {
public:
    Basis() = default;
    Basis(water::Stamp madeFrom, const water::Derived& derived);

    /// True where one made now, of the water with this stamp, would be made from the same.
    [[nodiscard]] bool holdsFor(water::Stamp ofPlan, const water::Derived& derived) const;

private:
    water::Stamp madeFrom_;
    std::shared_ptr<const surface::DrawnWater> drawn_;
    std::shared_ptr<const structure::ZoneMap> structure_;
    std::shared_ptr<const weed::WeedMap> weed_;
    std::shared_ptr<const sections::SectionMap> sections_;
};

} // namespace open_water
