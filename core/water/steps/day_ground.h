// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/marks/mark_input.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <cstdint>
#include <memory>

namespace water {

/// The bottom under one day's level with what is closed and what is a guess: made once for the day
/// and looked at by everything. Keeps alive what it was made from.
class DayGround {
public:
    /// \param derived made up to Step::sections. \return the error of closedCells().
    [[nodiscard]] static base::Result<std::shared_ptr<const DayGround>>
    make(const Water& water, const Derived& derived, units::Length levelChange);

    DayGround(const DayGround&) = delete; // The ground refers to its neighbours.
    DayGround(DayGround&&) = delete;
    DayGround& operator=(const DayGround&) = delete;
    DayGround& operator=(DayGround&&) = delete;
    ~DayGround() = default;

    [[nodiscard]] const grid::DepthGrid& today() const { return today_; }
    [[nodiscard]] const grid::Grid<std::uint8_t>& closed() const { return closed_; }
    [[nodiscard]] const rods::Ground& ground() const { return ground_; }
    [[nodiscard]] bool isGuess(grid::Cell c) const { return isGuess_[c] != 0; }
    [[nodiscard]] const geo::Outline& outline() const { return *derived_.outline; }
    /// Without log and waves. \param water that it was made from; it must outlive what is returned,
    /// and so must this.
    [[nodiscard]] marks::MarkInput input(const Water& water) const;

private:
    DayGround(const Water& water, const Derived& derived, units::Length levelChange,
              grid::Grid<std::uint8_t> closed);

    Derived derived_;
    grid::DepthGrid today_;
    grid::Grid<std::uint8_t> closed_;
    grid::Grid<std::uint8_t> isGuess_;
    rods::Ground ground_;
};

} // namespace water
