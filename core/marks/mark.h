// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/geo/lon_lat.h"
#include "core/geo/path.h"
#include "core/logbook/conditions.h"
#include "core/marks/caution.h"
#include "core/marks/factor.h"
#include "core/rods/rod_spread.h"
#include "core/sections/section.h"
#include "core/units/moment.h"

#include <algorithm>
#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace marks {

/// A place worth looking at for anchoring, before ropes and rods are worked out.
struct Candidate {
    geo::WaterPoint place;
    double promise = 0.0;  ///< What the place alone is worth, 0 up: chooses which candidates get
                           ///< ropes and rods.
    bool isPinned = false; ///< Put there by the user: never left out of the list.
    std::string name;      ///< The user's; empty for a place that was found.
};

/// The named place of the chart nearest to a mark, and where the mark lies from it.
struct NearPlace {
    std::string name;
    units::Length distance;
    units::Bearing bearing; ///< From the place to the mark.
    friend bool operator==(const NearPlace&, const NearPlace&) = default;
};

/// What a place is expected to give at the hours planned, on a day of usual luck: fish per 10
/// rod-hours.
struct ExpectedCatch {
    double per10RodHours = 0.0;
    double low = 0.0;  ///< Between the two
    double high = 0.0; ///< with 80 %.
};

/// How a boat lies in one wind.
struct Lying {
    anchoring::AnchorSet anchors;
    std::optional<WaveState> waves; ///< Nothing where the wind is not known.
};

/// What is known of the ground where an anchor lands.
struct AnchorGround {
    std::optional<double> slope;             ///< Rise over run; nothing where the depth is a guess.
    std::optional<soundings::Bottom> bottom; ///< What the lead brought up, or felt, near it.
};

/// A place to anchor, with its depth and its reasons.
struct Mark {
    int rank = 0;          ///< 1 is best.
    bool isPinned = false; ///< Put there by the user.
    std::string name;      ///< The user's; mostly empty.
    geo::WaterPoint place; ///< Where the boat lies.
    /// Where the user put it; the boat lies beside it where he laid an anchor so.
    std::optional<geo::WaterPoint> pinnedAt;
    geo::LonLat lonLat;
    units::Depth depth; ///< Today.
    units::Depth trust; ///< 95 % half-width of that depth.
    sections::SectionNumber section = sections::noSection;
    std::string sectionName;
    std::optional<NearPlace> near;          ///< Nothing where no named place is near.
    std::vector<structure::ZoneKind> zones; ///< Kinds within a cast, each once.
    /// How many times the water's mean the place is expected to give: the product of what the
    /// factors multiply by.
    double score = 0.0;
    std::vector<Factor> factors;
    std::optional<ExpectedCatch> expected; ///< Nothing while the log has no stay on this water.
    bool toLearn = false; ///< On the list to find out, and not for what it promises.
    /// Effective, and significant; nothing where nobody said how strong the wind is.
    std::optional<units::Length> fetch;
    std::optional<units::Length> waveHeight;
    anchoring::AnchorSet anchors;
    AnchorGround bowGround;
    AnchorGround sternGround;
    rods::RodSpread spread;
    std::vector<Caution> cautions; ///< Of the place; those of the anchors are with them.
    /// Once the wind has turned; nothing on a day of one wind. What stands above is of the hours of
    /// the mark's stay, or of the first wind where the day has none.
    std::optional<Lying> later;

    /// Whether the user put an anchor or a bait of it.
    [[nodiscard]] bool isLaidByHand() const {
        return anchors.bow.isByHand || (anchors.stern && anchors.stern->isByHand) ||
               std::ranges::any_of(spread.rods, &rods::RodPlace::isByHand);
    }
};

/// One stop of the day.
struct DayStop {
    int rank = 0; ///< Of the mark.
    units::Moment arrive;
    units::Moment leave;
    units::Length move; ///< Over water from the stop before, or from the launch.
    /// The same as a line to steer, its ends included; empty where no way is known.
    geo::Path way;
    std::chrono::seconds stay{}; ///< Of it, without the time at the ropes.
    bool isStayByHand = false;   ///< As the user wants it just here.
    logbook::Wind wind = {};     ///< That the anchors are laid for.
};

/// What of the day is spent in the dark.
struct DarkHours {
    enum class Home { inTheLight, afterSunset, inTheDark };
    bool startsInTheDark = false;
    Home home = Home::inTheLight;
    /// False where all of the day is light.
    [[nodiscard]] bool areAny() const { return startsInTheDark || home != Home::inTheLight; }
    friend bool operator==(const DarkHours&, const DarkHours&) = default;
};

/// The day: stops in the order in which the boat goes.
struct DayPlan {
    std::vector<DayStop> stops;
    units::Length moves;       ///< All of them, back to the launch included.
    geo::Path wayHome;         ///< From the last stop to the launch; empty where none is known.
    std::vector<int> leftOut;  ///< Ranks of marks that the boat cannot reach or has no time for.
    std::vector<int> tooRough; ///< Ranks of marks too rough in the hours that are left for them.
    std::chrono::seconds leastStay{}; ///< On a mark, for which there was no time.
    bool isOrderByHand = false;       ///< The user's; else the program's.
    DarkHours dark;
};

} // namespace marks
