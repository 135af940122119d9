// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/lay_by_hand.h"

#include "core/anchoring/cautions.h"
#include "core/anchoring/landing.h"
#include "core/anchoring/rope.h"
#include "core/anchoring/swing.h"

#include <algorithm>
#include <cmath>

namespace anchoring {

namespace {

using base::ErrorKind;
using base::Result;
using units::Length;

constexpr double beamDrag = 1.0; // as placeAnchors() has it

std::unexpected<base::Error> cannot(const char* what, const char* hint) {
    return base::fail(ErrorKind::unusableInput, what, "", hint);
}

/// An anchor where the user put it, with the rope that reaches it from its cleat.
Anchor laidAt(const Room& room, geo::WaterPoint place, geo::WaterPoint cleat, Length cleatHeight) {
    Anchor anchor;
    anchor.place = place;
    anchor.depth = room.depth.at(place).value_or(units::Depth());
    anchor.rope = Length::metres(
        std::hypot(geo::distance_m(cleat, place), riseOf(anchor.depth, cleatHeight).inMetres()));
    anchor.scope = scopeOf(anchor.rope, anchor.depth, cleatHeight).value_or(0.0);
    anchor.isByHand = true;
    return anchor;
}

/// The other anchor by its scope, or by less where there is no room for that.
Result<Anchor> landOther(const Room& room, Rope rope, double leastScope, Length draught) {
    Landed landed = landAnchor(room, rope, draught);
    if (!landed.anchor) {
        rope.scope = std::min(rope.scope, leastScope);
        landed = landAnchor(room, rope, draught);
    }
    if (!landed.anchor) {
        return landed.hindrance == Hindrance::rope
                   ? cannot("the rope of the other anchor is too short for the depth there",
                            "take a longer rope, or lay this anchor elsewhere")
                   : cannot("there is no room for the other anchor on the far side of the boat",
                            "lay it by hand too, or lay this one elsewhere");
    }
    return *landed.anchor;
}

Anchor bowAt(const Room& room, geo::WaterPoint place, const Lie& lie, const BoatSettings& boat) {
    return laidAt(room, place, bowOf(lie, boat.length), boat.bowHeight);
}

Anchor sternAt(const Room& room, geo::WaterPoint place, const Lie& lie, const BoatSettings& boat) {
    return laidAt(room, place, sternOf(lie, boat.length), boat.sternHeight);
}

/// -180 to 180, clockwise.
double turnOff_deg(units::Bearing heading, units::Bearing wind) {
    const double clockwise_deg =
        units::Bearing::degrees(heading.inDegrees() - wind.inDegrees()).inDegrees();
    return clockwise_deg > 180.0 ? clockwise_deg - 360.0 : clockwise_deg;
}

/// On the line between both anchors, as near to the mark as the boat fits.
Result<AnchorSet> betweenBoth(const Room& room, geo::WaterPoint mark, const AnchorsByHand& hand,
                              const BoatSettings& boat) {
    const Length apart = geo::distance(*hand.stern, *hand.bow);
    if (apart < boat.length) {
        return cannot("the anchors lie nearer to each other than the boat is long",
                      "lay them farther apart");
    }
    const units::Bearing ahead = geo::bearing(*hand.stern, *hand.bow);
    const double along_m =
        (mark.x_m - hand.stern->x_m) * ahead.east() + (mark.y_m - hand.stern->y_m) * ahead.north();
    const double half_m = 0.5 * boat.length.inMetres();
    const Length from =
        Length::metres(std::clamp(along_m, half_m, std::max(half_m, apart.inMetres() - half_m)));
    const Lie lie{geo::moved(*hand.stern, ahead, from), ahead};
    return AnchorSet{bowAt(room, *hand.bow, lie, boat),
                     sternAt(room, *hand.stern, lie, boat),
                     lie,
                     {},
                     0.0,
                     {},
                     {}};
}

/// In line with the one that is laid, her middle on the mark.
Result<AnchorSet> inLineWith(const Room& room, geo::WaterPoint mark, const AnchorsByHand& hand,
                             const BoatSettings& boat) {
    const geo::WaterPoint laid = hand.bow ? *hand.bow : *hand.stern;
    if (geo::distance(laid, mark) < boat.length * 0.5) {
        return cannot("the anchor lies under the boat", "lay it farther off");
    }
    const Lie lie{mark, hand.bow ? geo::bearing(mark, laid) : geo::bearing(laid, mark)};
    AnchorSet set;
    set.lie = lie;
    if (hand.bow) {
        set.bow = bowAt(room, laid, lie, boat);
        const auto stern = landOther(room,
                                     {sternOf(lie, boat.length), lie.heading.opposite(),
                                      boat.sternHeight, boat.sternRope, boat.sternScope},
                                     leastSternScope, boat.draught);
        if (!stern) {
            return std::unexpected(stern.error());
        }
        set.stern = *stern;
    } else {
        set.stern = sternAt(room, laid, lie, boat);
        const auto bow = landOther(
            room, {bowOf(lie, boat.length), lie.heading, boat.bowHeight, boat.bowRope, boat.scope},
            std::min(boat.leastScope, boat.scope), boat.draught);
        if (!bow) {
            return std::unexpected(bow.error());
        }
        set.bow = *bow;
    }
    return set;
}

/// Downwind of the one anchor, as far from it as the mark lies.
Result<AnchorSet> downwindOf(const Room& room, geo::WaterPoint mark, geo::WaterPoint anchor,
                             const Weather& weather, const BoatSettings& boat) {
    const Length off = geo::distance(anchor, mark);
    if (off < boat.length * 0.5) {
        return cannot("the anchor lies under the boat", "lay it farther off");
    }
    const Lie lie{geo::moved(anchor, weather.windFrom.opposite(), off), weather.windFrom};
    AnchorSet set{bowAt(room, anchor, lie, boat), std::nullopt, lie, {}, 0.0, {}, {}};
    set.fallBackRope = set.bow.rope;
    set.swing = swingOf(set.bow, lie, weather, boat);
    return set;
}

} // namespace

base::Result<AnchorSet> layByHand(const grid::DepthGrid& depth,
                                  const grid::Grid<std::uint8_t>* closed, geo::WaterPoint mark,
                                  const AnchorsByHand& byHand, const Weather& weather,
                                  const BoatSettings& boat, base::Progress& progress) {
    if (const auto fine = checkSettings(boat, weather); !fine) {
        return std::unexpected(fine.error());
    }
    if (!(boat.toOneAnchor ? byHand.bow.has_value() : byHand.areAny())) {
        return base::fail(ErrorKind::wrongUse, "no anchor is laid by hand", "",
                          "lay one, or let the program lay them");
    }
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    const Room room{depth, closed};
    Result<AnchorSet> set = boat.toOneAnchor ? downwindOf(room, mark, *byHand.bow, weather, boat)
                            : byHand.bow && byHand.stern ? betweenBoth(room, mark, byHand, boat)
                                                         : inLineWith(room, mark, byHand, boat);
    if (!set) {
        return set;
    }
    if (!depth.at(set->lie.centre)) {
        return cannot("the boat would lie ashore from these anchors in this wind",
                      "lay them elsewhere, or let the program lay them");
    }
    if (set->stern) {
        set->fallBackRope = fallBackRopeOf(set->bow, *set->stern, boat);
        set->offTheWind_deg = turnOff_deg(set->lie.heading, weather.windFrom);
        if (weather.windSpeed) {
            set->beamPull_N = windPull_N(*weather.windSpeed, boat.windage, beamDrag);
        }
    }
    set->cautions = cautionsByHand(room, *set, {mark, byHand.windFrom}, weather, boat);
    return set;
}

} // namespace anchoring
