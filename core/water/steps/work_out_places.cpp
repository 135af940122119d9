// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/work_out_places.h"

#include "core/anchoring/place_anchors.h"
#include "core/marks/propose_marks.h"
#include "core/marks/winds_of_day.h"
#include "core/rods/spread_rods.h"
#include "core/water/steps/day_waves.h"

#include <algorithm>

#include <fmt/format.h>

namespace water {

using base::Result;

namespace {

anchoring::BoatSettings boatOf(const marks::Tackle& tackle) {
    anchoring::BoatSettings boat;
    boat.length = tackle.boatLength;
    boat.bowHeight = tackle.bowHeight;
    boat.bowRope = tackle.bowRope;
    boat.sternRope = tackle.sternRope;
    boat.scope = tackle.scope;
    boat.leastScope = std::min(boat.leastScope, tackle.scope);
    return boat;
}

rods::RodSettings rodsOf(const marks::Tackle& tackle) {
    rods::RodSettings settings;
    settings.rods = tackle.rods;
    settings.cast = tackle.cast;
    settings.overDepth = tackle.overDepth;
    settings.nearest = std::min(settings.nearest, tackle.cast * 0.5);
    return settings;
}

/// How the boat lies at a place in one wind. Only a mark that the user himself put into closed
/// water gets its anchors there, with a caution.
Result<marks::Lying> lyingIn(const logbook::Wind& wind, geo::WaterPoint place,
                             const PlanWork& work) {
    const rods::Ground& ground = work.day.ground();
    const Exposure lies = exposureAt(work.day.outline(), ground.today(), place, wind);
    anchoring::Weather weather{lies.side, wind.speed, std::nullopt, wind.from.has_value()};
    if (lies.waves) {
        weather.waveHeight = lies.waves->height;
    }
    auto anchors = anchoring::placeAnchors(ground.today(),
                                           ground.isClosed(place) ? nullptr : &work.day.closed(),
                                           place, weather, boatOf(work.plan.tackle), work.progress);
    if (!anchors) {
        return std::unexpected(anchors.error());
    }
    return marks::Lying{std::move(*anchors), lies.waves};
}

/// The candidate with its ropes; nothing where no two anchors would hold the boat there in one of
/// the day's winds.
Result<marks::WorkedCandidate> workOut(const marks::Candidate& candidate, const PlanWork& work) {
    std::vector<marks::Lying> lying;
    for (const marks::WindOfHours& part : marks::windsOf(work.plan.day)) {
        auto one = lyingIn(part.wind, candidate.place, work);
        if (!one) {
            return std::unexpected(one.error());
        }
        lying.push_back(std::move(*one));
    }
    marks::WorkedCandidate out{
        candidate, std::move(lying.front().anchors), {}, lying.front().waves, {}};
    if (lying.size() > 1) {
        out.later = std::move(lying.back());
    }
    return out;
}

/// In none of the day's winds an open boat can lie there.
bool isTooRough(const marks::WorkedCandidate& one) {
    const auto isRough = [](const std::optional<marks::WaveState>& waves) {
        return waves && waves->height > marks::ProposeSettings().roughest;
    };
    return !one.candidate.isPinned && isRough(one.waves) &&
           (!one.later || isRough(one.later->waves));
}

/// The same from what is kept, if it is there. What the user calls a place, and whether he put it
/// there, may have changed since.
Result<marks::WorkedCandidate> workedOut(const marks::Candidate& candidate, const PlanWork& work) {
    const std::pair place{candidate.place.x_m, candidate.place.y_m};
    auto found = work.kept.worked.find(place);
    if (found == work.kept.worked.end()) {
        auto made = workOut(candidate, work);
        if (!made && made.error().kind == base::ErrorKind::cancelled) {
            return made;
        }
        found = work.kept.worked.emplace(place, std::move(made)).first;
    }
    Result<marks::WorkedCandidate> out = found->second;
    if (out) {
        out->candidate = candidate;
    }
    return out;
}

} // namespace

Result<Worked> workOutAll(const std::vector<marks::Candidate>& candidates, const PlanWork& work) {
    Worked worked;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        if (work.progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        work.progress.tell(static_cast<double>(i) / static_cast<double>(candidates.size()));
        auto one = workedOut(candidates[i], work);
        if (one && isTooRough(*one)) {
            ++worked.refused;
            worked.lastReason = fmt::format("waves of {:.2f} m", one->waves->height.inMetres());
        } else if (one) {
            worked.candidates.push_back(std::move(*one));
        } else if (one.error().kind == base::ErrorKind::unusableInput) {
            ++worked.refused;
            worked.lastReason = one.error().sentence();
            if (candidates[i].isPinned) {
                worked.pinned.push_back({candidates[i].name, one.error(),
                                         work.water.frame->toEarth(candidates[i].place)});
            }
        } else {
            return std::unexpected(one.error());
        }
    }
    if (worked.candidates.empty()) {
        return base::fail(base::ErrorKind::unusableInput,
                          fmt::format("none of {} places holds the boat between two anchors ({})",
                                      candidates.size(), worked.lastReason),
                          "", "take more rope, a smaller scope, or another limit of depth");
    }
    return worked;
}

marks::RodsFor rodsFrom(const PlanWork& work) {
    return [&work](const anchoring::AnchorSet& anchors) {
        return rods::spreadRods(work.day.ground(), anchors, rodsOf(work.plan.tackle),
                                work.progress);
    };
}

} // namespace water
