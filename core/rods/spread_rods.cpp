// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rods/spread_rods.h"

#include "core/anchoring/swing.h"
#include "core/rods/bait_rules.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace rods {

namespace {

constexpr int bearingsTried = 90;
constexpr double ringStep_m = 3.0;
constexpr double edgeReach_m = 4.0;
constexpr double depthReach_m = 0.75;
constexpr double lineReach_deg = 20.0;
constexpr double depthWorth = 3.0;
constexpr double waterWorth = 0.5;
constexpr std::size_t mostRods = 8;
constexpr int mostRounds = 30;
constexpr double slack = 1e-9;

/// A place where a bait could lie, with all that its worth depends on.
struct Choice {
    geo::WaterPoint place;
    double turn_deg = 0.0; ///< Clockwise from the bow.
    double depth_m = 0.0;
    std::optional<structure::ZoneKind> kind;
    std::int32_t edgeZone = -1;
    double edgeWorth = 0.0;
    /// The same as turn_deg from the boat's other lies; empty between two anchors.
    std::vector<double> otherTurns_deg;
    bool isByHand = false;
};

/// The depths of a ring.
struct Reach {
    double from_m = INFINITY;
    double to_m = -INFINITY;
};

using Chosen = std::span<const Choice* const>;

double turnOf_deg(const anchoring::Lie& lie, geo::WaterPoint p) {
    return units::Bearing::degrees(geo::bearing(lie.centre, p).inDegrees() -
                                   lie.heading.inDegrees())
        .inDegrees();
}

Choice choiceAt(const Ground& ground, const anchoring::Lie& lie, geo::WaterPoint p,
                const std::vector<EdgePiece>& edges) {
    Choice choice;
    choice.place = p;
    choice.turn_deg = turnOf_deg(lie, p);
    choice.depth_m = ground.depthAt(p).value_or(units::Depth()).inMetres();
    choice.kind = ground.kindAt(p);
    double nearest_m = INFINITY;
    for (const EdgePiece& edge : edges) {
        const double off_m = geo::distanceToSegment_m(p, edge.a, edge.b);
        if (off_m < nearest_m) {
            nearest_m = off_m;
            choice.edgeZone = edge.zone;
        }
    }
    const double off = nearest_m / edgeReach_m;
    choice.edgeWorth = std::exp(-off * off);
    return choice;
}

/// Length of the union of intervals of one half-width round `middles`, inside [from, to].
double covered(std::span<double> middles, double half, double from, double to) {
    std::ranges::sort(middles);
    double sum = 0.0;
    double reached = from;
    for (const double middle : middles) {
        const double low = std::max(reached, middle - half);
        const double high = std::min(to, middle + half);
        if (high > low) {
            sum += high - low;
            reached = high;
        }
    }
    return sum;
}

double edgesWorth(Chosen chosen) {
    double sum = 0.0;
    for (const Choice* a : chosen) {
        double share = a->edgeWorth;
        for (const Choice* b : chosen) {
            const bool isBetter =
                b->edgeWorth != a->edgeWorth ? b->edgeWorth > a->edgeWorth : b < a;
            if (b != a && b->edgeZone == a->edgeZone && isBetter) {
                share *= 0.5;
            }
        }
        sum += share;
    }
    return sum;
}

double kindsWorth(Chosen chosen) {
    std::array<bool, structure::allZoneKinds.size()> met{};
    double sum = 0.0;
    for (const Choice* choice : chosen) {
        if (choice->kind && !met[static_cast<std::size_t>(*choice->kind)]) {
            met[static_cast<std::size_t>(*choice->kind)] = true;
            sum += worthOf(*choice->kind);
        }
    }
    return sum;
}

double depthsWorth(Chosen chosen, const Reach& reach) {
    std::array<double, mostRods> depths_m{};
    std::ranges::transform(chosen, depths_m.begin(), &Choice::depth_m);
    const double range_m = reach.to_m - reach.from_m;
    if (chosen.empty() || range_m <= 2.0 * depthReach_m) {
        return chosen.empty() ? 0.0 : depthWorth;
    }
    const std::span used(depths_m.data(), chosen.size());
    return depthWorth * covered(used, depthReach_m, reach.from_m, reach.to_m) / range_m;
}

double linesWorth(Chosen chosen) {
    // Lines near the bow are counted from both sides of it, so that the circle closes.
    std::array<double, 3 * mostRods> turns_deg{};
    std::size_t count = 0;
    for (const Choice* choice : chosen) {
        for (const double turn_deg : {-360.0, 0.0, 360.0}) {
            turns_deg[count++] = choice->turn_deg + turn_deg;
        }
    }
    const std::span used(turns_deg.data(), count);
    return waterWorth * covered(used, lineReach_deg, 0.0, 360.0) / 360.0;
}

double setWorth(Chosen chosen, const Reach& reach) {
    return edgesWorth(chosen) + kindsWorth(chosen) + depthsWorth(chosen, reach) +
           linesWorth(chosen);
}

/// The ring round the boat: every place that a bait can reach, far ones first.
std::vector<Choice> ringOf(const Ground& ground, const anchoring::Lie& lie,
                           const RodSettings& settings) {
    const double cast_m = settings.cast.inMetres();
    const double nearest_m = settings.nearest.inMetres();
    const std::vector<EdgePiece> edges = ground.edgesNear(lie.centre, cast_m + 3.0 * edgeReach_m);
    const int rings = std::max(1, static_cast<int>(std::floor((cast_m - nearest_m) / ringStep_m)));
    std::vector<Choice> ring;
    for (int k = 0; k <= rings; ++k) {
        const auto distance = units::Length::metres(cast_m - k * (cast_m - nearest_m) / rings);
        for (int turn = 0; turn < bearingsTried; ++turn) {
            const geo::WaterPoint p = geo::moved(
                lie.centre, lie.heading.turnedBy(turn * 360.0 / bearingsTried), distance);
            if (ground.isFishable(p) && ground.isOverOpenWater(lie.centre, p) &&
                ground.depthAt(p).value_or(units::Depth()) >= settings.shallowest) {
                ring.push_back(choiceAt(ground, lie, p, edges));
            }
        }
    }
    return ring;
}

bool isClearOfRopes(const Choice& choice, const std::vector<units::Bearing>& ropes,
                    double clear_deg) {
    return std::ranges::all_of(ropes, [&](units::Bearing rope) {
        return rope.angleTo_deg(units::Bearing::degrees(choice.turn_deg)) >= clear_deg;
    });
}

Reach reachOf(const std::vector<Choice>& ring) {
    Reach reach;
    for (const Choice& choice : ring) {
        reach.from_m = std::min(reach.from_m, choice.depth_m);
        reach.to_m = std::max(reach.to_m, choice.depth_m);
    }
    return reach;
}

bool areClear(const Choice& a, const Choice& b, const RodSettings& settings) {
    const double angle_deg =
        units::Bearing::degrees(a.turn_deg).angleTo_deg(units::Bearing::degrees(b.turn_deg));
    const bool isClear =
        angle_deg >= settings.leastAngle_deg - slack &&
        geo::distance_m(a.place, b.place) >= settings.leastApart.inMetres() - slack;
    for (std::size_t k = 0; isClear && k < a.otherTurns_deg.size(); ++k) {
        const auto turn = units::Bearing::degrees(a.otherTurns_deg[k]);
        if (turn.angleTo_deg(units::Bearing::degrees(b.otherTurns_deg[k])) <
            settings.leastAngle_deg - slack) {
            return false;
        }
    }
    return isClear;
}

/// From the boat's other lies: fills where the choice lies from each. \return whether it can be
/// fished from all of them.
bool takeOtherLies(const Ground& ground, const std::vector<anchoring::Lie>& lies,
                   const RodSettings& settings, Choice& choice) {
    bool isCertain = true;
    for (std::size_t k = 1; k < lies.size(); ++k) {
        const double turn_deg = turnOf_deg(lies[k], choice.place);
        const units::Length away = geo::distance(lies[k].centre, choice.place);
        // The one rope leads straight ahead.
        isCertain = isCertain && away >= settings.nearest && away <= settings.cast &&
                    units::Bearing::degrees(turn_deg).angleTo_deg(units::Bearing()) >=
                        settings.ropeClear_deg &&
                    ground.isOverOpenWater(lies[k].centre, choice.place);
        choice.otherTurns_deg.push_back(turn_deg);
    }
    return isCertain;
}

/// The baits that the user put, as far as there are rods for them.
std::vector<Choice> choicesByHand(const Ground& ground, const std::vector<anchoring::Lie>& lies,
                                  const RodSettings& settings,
                                  const std::vector<geo::WaterPoint>& byHand) {
    const anchoring::Lie& lie = lies.front();
    const std::vector<EdgePiece> edges =
        ground.edgesNear(lie.centre, settings.cast.inMetres() + 3.0 * edgeReach_m);
    std::vector<Choice> choices;
    for (const geo::WaterPoint place : byHand) {
        if (choices.size() < static_cast<std::size_t>(settings.rods)) {
            choices.push_back(choiceAt(ground, lie, place, edges));
            choices.back().isByHand = true;
            takeOtherLies(ground, lies, settings, choices.back());
        }
    }
    return choices;
}

/// The set of rods while it is being chosen.
class Spread {
public:
    /// \param byHand stay where they are.
    Spread(const std::vector<Choice>& ring, const Reach& reach, const RodSettings& settings,
           const std::vector<Choice>& byHand)
        : ring_(ring), settings_(settings), reach_(reach), byHand_(byHand.size()) {
        for (const Choice& choice : byHand) {
            chosen_.push_back(&choice);
        }
    }

    /// Adds the bait that raises the worth most. \return false where there is room for none.
    bool add() {
        if (chosen_.size() >= static_cast<std::size_t>(settings_.rods)) {
            return false;
        }
        chosen_.push_back(nullptr);
        const Choice* best = bestFor(chosen_.size() - 1, -INFINITY);
        if (best == nullptr) {
            chosen_.pop_back();
            return false;
        }
        chosen_.back() = best;
        return true;
    }

    /// Moves one bait after the other to where it raises the worth. \return true if any moved.
    bool exchange() {
        bool moved = false;
        for (std::size_t k = byHand_; k < chosen_.size(); ++k) {
            const double now = setWorth(chosen_, reach_);
            if (const Choice* better = bestFor(k, now + slack)) {
                chosen_[k] = better;
                moved = true;
            }
        }
        return moved;
    }

    [[nodiscard]] const std::vector<const Choice*>& chosen() const { return chosen_; }

private:
    /// The choice that gives the set the greatest worth above `least` in place `k`.
    const Choice* bestFor(std::size_t k, double least) {
        const Choice* held = chosen_[k];
        const Choice* best = nullptr;
        for (const Choice& choice : ring_) {
            if (&choice == held || !fits(choice, k)) {
                continue;
            }
            chosen_[k] = &choice;
            const double worth = setWorth(chosen_, reach_);
            if (worth > least) {
                least = worth + slack;
                best = &choice;
            }
        }
        chosen_[k] = held;
        return best;
    }

    [[nodiscard]] bool fits(const Choice& choice, std::size_t except) const {
        for (std::size_t k = 0; k < chosen_.size(); ++k) {
            if (k != except && !areClear(choice, *chosen_[k], settings_)) {
                return false;
            }
        }
        return true;
    }

    const std::vector<Choice>& ring_;
    const RodSettings& settings_;
    Reach reach_;
    std::size_t byHand_ = 0; ///< So many of the chosen, the first of them.
    std::vector<const Choice*> chosen_;
};

RodSpread spreadOf(std::vector<const Choice*> chosen, const anchoring::Lie& lie,
                   const RodSettings& settings) {
    std::ranges::sort(chosen, {}, &Choice::turn_deg);
    RodSpread spread;
    for (const Choice* choice : chosen) {
        RodPlace rod;
        rod.place = choice->place;
        rod.bearing = geo::bearing(lie.centre, choice->place);
        rod.distance = geo::distance(lie.centre, choice->place);
        rod.depth = units::Depth::metres(choice->depth_m);
        rod.stopKnot = rod.depth + units::Depth::fromLength(settings.overDepth);
        rod.over = choice->kind;
        rod.isByHand = choice->isByHand;
        spread.rods.push_back(rod);
    }
    return spread;
}

} // namespace

double worthOf(const std::vector<geo::WaterPoint>& baits, const Ground& ground,
               const anchoring::Lie& lie, const RodSettings& settings) {
    const std::vector<EdgePiece> edges =
        ground.edgesNear(lie.centre, settings.cast.inMetres() + 3.0 * edgeReach_m);
    std::vector<Choice> choices;
    std::vector<const Choice*> chosen;
    for (const geo::WaterPoint bait : baits) {
        choices.push_back(choiceAt(ground, lie, bait, edges));
    }
    for (std::size_t k = 0; k < std::min(choices.size(), mostRods); ++k) {
        chosen.push_back(&choices[k]);
    }
    return setWorth(chosen, reachOf(ringOf(ground, lie, settings)));
}

base::Result<RodSpread> spreadRods(const Ground& ground, const anchoring::AnchorSet& anchors,
                                   const RodSettings& settings, base::Progress& progress,
                                   const std::vector<geo::WaterPoint>& byHand) {
    if (const auto problems = problemsIn(settings); !problems.empty()) {
        return base::fail(base::ErrorKind::wrongUse, "the rods cannot be set so", "rods",
                          "choose " + problems.front());
    }
    if (!ground.depthAt(anchors.lie.centre)) {
        return base::fail(base::ErrorKind::wrongUse, "the boat does not lie on water", "rods",
                          "place the anchors first");
    }
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    const std::vector<anchoring::Lie> lies = anchoring::liesOf(anchors);
    const std::vector<Choice> laid = choicesByHand(ground, lies, settings, byHand);
    std::vector<Choice> ring = ringOf(ground, anchors.lie, settings);
    std::erase_if(ring,
                  [&](Choice& choice) { return !takeOtherLies(ground, lies, settings, choice); });
    const Reach reach = reachOf(ring);
    std::erase_if(ring, [&, ropes = ropeTurns(anchors)](const Choice& choice) {
        return !isClearOfRopes(choice, ropes, settings.ropeClear_deg);
    });
    Spread spread(ring, reach, settings, laid);
    bool changed = true;
    for (int round = 0; changed && round < mostRounds; ++round) {
        changed = false;
        while (spread.add()) {
            changed = true;
        }
        changed = spread.exchange() || changed;
    }
    RodSpread out = spreadOf(spread.chosen(), anchors.lie, settings);
    out.cautions = baitsThatBreakRules(out, ground, anchors, settings);
    out.laidTooMany = static_cast<int>(byHand.size() - laid.size());
    return out;
}

} // namespace rods
