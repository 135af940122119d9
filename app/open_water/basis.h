// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/derived.h"
#include "core/water/water.h"

#include <memory>

namespace open_water {

/// What a plan or a proposal was made from: the water, and what was derived of it.
class Basis {
public:
    Basis() = default;
    Basis(std::shared_ptr<const water::Water> water, const water::Derived& derived);

    /// True where one made now would be made from the same.
    [[nodiscard]] bool holdsFor(const std::shared_ptr<const water::Water>& water,
                                const water::Derived& derived) const;

private:
    std::shared_ptr<const water::Water> water_;
    std::shared_ptr<const surface::DrawnWater> drawn_;
    std::shared_ptr<const structure::ZoneMap> structure_;
    std::shared_ptr<const weed::WeedMap> weed_;
    std::shared_ptr<const sections::SectionMap> sections_;
    /// The last water compared, so that each is looked through once.
    mutable std::shared_ptr<const water::Water> compared_;
    mutable bool isSame_ = false;
};

} // namespace open_water
