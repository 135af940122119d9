// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/day_ground.h"

#include "core/water/document/chosen_scale.h"
#include "core/water/steps/closed_cells.h"

namespace water {

namespace {

grid::Grid<std::uint8_t> guessesOf(const surface::TrustGrid& trust) {
    grid::Grid<std::uint8_t> isGuess(trust.frame(), 0);
    for (std::size_t i = 0; i < isGuess.size(); ++i) {
        isGuess[i] = trust.names()[i] == surface::TrustName::guess ? 1 : 0;
    }
    return isGuess;
}

} // namespace

base::Result<std::shared_ptr<const DayGround>>
DayGround::make(const Water& water, const Derived& derived, units::Length levelChange) {
    auto closed = closedCells(water, derived.drawn->mask.frame());
    if (!closed) {
        return std::unexpected(closed.error());
    }
    return std::shared_ptr<const DayGround>(
        new DayGround(water, derived, levelChange, std::move(*closed)));
}

DayGround::DayGround(const Water& water, const Derived& derived, units::Length levelChange,
                     grid::Grid<std::uint8_t> closed)
    : derived_(derived), today_(derived.drawn->depth.raisedBy(levelChange)),
      closed_(std::move(closed)), isGuess_(guessesOf(derived.drawn->trust)),
      ground_(today_, bandsOf(water, derived).limit(), &closed_, *derived_.structure,
              derived_.weed->zones) {}

marks::MarkInput DayGround::input(const Water& water) const {
    return {.frame = *water.frame,
            .outline = *derived_.outline,
            .ground = ground_,
            .bands = bandsOf(water, derived_),
            .sections = *derived_.sections,
            .trust_m = derived_.drawn->trust.halfWidths_m(),
            .isGuess = &isGuess_,
            .learned = nullptr,
            .waveHeightAt = {},
            .bannedAt = {}};
}

} // namespace water
