// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/derived.h"
#include "core/water/document/stamp.h"

#include <memory>

namespace open_water {

/// What a plan or a proposal was made from: the stamp of all that a plan depends on, and the very
/// map. A map drawn afresh of the same water has the same stamp, but its depths may differ by some
/// centimetres. What one made now would be made from: OpenWater::basisOfNow().
class Basis {
public:
    Basis() = default;
    Basis(water::Stamp madeFrom, const water::Derived& derived);

    friend bool operator==(const Basis&, const Basis&) = default;

private:
    water::Stamp madeFrom_;
    std::shared_ptr<const surface::DrawnWater> drawn_;
    std::shared_ptr<const structure::ZoneMap> structure_;
    std::shared_ptr<const weed::WeedMap> weed_;
    std::shared_ptr<const sections::SectionMap> sections_;
};

} // namespace open_water
