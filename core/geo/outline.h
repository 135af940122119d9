// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/lon_lat.h"
#include "core/geo/path.h"
#include "core/geo/water_frame.h"
#include "core/units/area.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace geo {

/// One piece of water: an outer ring, counter-clockwise, and the islands in it, clockwise.
struct Piece {
    Ring outer;
    std::vector<Ring> islands;
};

/// Area of the piece less its islands.
[[nodiscard]] units::Area areaOf(const Piece& piece);

/// The same piece in degrees.
[[nodiscard]] LonLatPiece toEarth(const Piece& piece, const WaterFrame& frame);
/// And back.
[[nodiscard]] Piece toWater(const LonLatPiece& piece, const WaterFrame& frame);

/// A straight piece of shore.
struct ShoreSegment {
    WaterPoint a;
    WaterPoint b;
};

/// The outline of the water with its islands, at chart level, in the water's frame. Never empty,
/// crosses itself nowhere. Cheap to copy; immutable; safe to share between threads.
class Outline {
public:
    /// Rings may run either way; repeated points are dropped, rings of no area too.
    /// \return unusableInput where no ring encloses water, or where the shore crosses itself
    /// (`where` says at which position).
    [[nodiscard]] static base::Result<Outline> make(std::vector<Piece> pieces,
                                                    const WaterFrame& frame);
    /// The same from rings in degrees.
    [[nodiscard]] static base::Result<Outline> make(std::span<const LonLatPiece> pieces,
                                                    const WaterFrame& frame);

    [[nodiscard]] const std::vector<Piece>& pieces() const;
    [[nodiscard]] const Box& box() const;
    [[nodiscard]] units::Area area() const;
    /// Length of the shoreline, islands included.
    [[nodiscard]] units::Length shoreLength() const;
    /// True where p is in the water; points on the shore itself may fall either way. About log n.
    [[nodiscard]] bool contains(WaterPoint p) const;
    /// Distance to the nearest shore, islands included; never negative.
    [[nodiscard]] double distanceToShore_m(WaterPoint p) const;
    /// Every straight piece of shore.
    [[nodiscard]] const std::vector<ShoreSegment>& segments() const;
    /// x of every crossing of the horizontal line y with the shore, ascending: water lies between
    /// the 1st and 2nd, 3rd and 4th...
    [[nodiscard]] std::vector<double> crossingsAt(double y_m) const;
    /// True where the straight line from a to b meets the shore.
    [[nodiscard]] bool isCrossedBy(WaterPoint a, WaterPoint b) const;
    /// Distance from p to the first shore straight ahead; nothing where there is none that way.
    [[nodiscard]] std::optional<double> firstShoreAhead_m(WaterPoint p,
                                                          units::Bearing towards) const;

private:
    struct Inside;
    explicit Outline(std::shared_ptr<const Inside> inside) : inside_(std::move(inside)) {}
    std::shared_ptr<const Inside> inside_;
};

} // namespace geo
