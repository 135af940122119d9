// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/shared_list.h"
#include "core/geo/lon_lat.h"
#include "core/geo/water_frame.h"
#include "core/logbook/house_rules.h"
#include "core/logbook/kept_log.h"
#include "core/marks/plan.h"
#include "core/sections/numbering.h"
#include "core/sections/section.h"
#include "core/sections/section_change.h"
#include "core/soundings/lead_line.h"
#include "core/soundings/survey_day.h"
#include "core/units/level.h"
#include "core/units/moment.h"
#include "core/water/document/banned_water.h"
#include "core/water/document/belief_profile.h"
#include "core/water/document/boat_sheet.h"
#include "core/water/document/day_by_hand.h"
#include "core/water/document/laid_by_hand.h"
#include "core/water/document/settings.h"
#include "core/weed/weed_note.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace water {

/// A place with a name: a point, a bay, the launch's jetty.
struct NamedPlace {
    std::string name;
    geo::LonLat place;
    friend bool operator==(const NamedPlace&, const NamedPlace&) = default;
};

/// A mark that the user put or moved by hand: ranked with the others and never dropped.
struct PinnedMark {
    std::string name; ///< May be empty.
    geo::LonLat place;
    LaidByHand laid = {}; ///< Its anchors and baits, as far as he put them too.
    friend bool operator==(const PinnedMark&, const PinnedMark&) = default;
};

/// What the user has: the whole document, as a value. Whatever can be computed from it is not here
/// but in Derived. A copy shares all that is long with the water that it was made of.
struct Water {
    std::string name;
    units::Clock clock;
    units::WaterLevel chartLevel;         ///< The gauge reading that every stored depth refers to.
    std::optional<geo::WaterFrame> frame; ///< Chosen once, with the first shore or soundings.
    base::SharedList<geo::LonLatPiece> shoreline; ///< At chart level. Empty: none yet.
    std::vector<soundings::SurveyDay> days;
    base::SharedList<soundings::LeadLineSounding> leadLine;
    base::SharedList<weed::WeedNote> weedNotes;
    std::vector<NamedPlace> places;
    logbook::HouseRules houseRules;
    Settings settings;
    std::vector<sections::SectionName> sectionNames;
    std::vector<sections::SectionChange> sectionChanges; ///< In the order in which they are made.
    /// The numbers that its sections have and had, and the borders of the map last shown. No act of
    /// the user's: it is kept with every map, no undo takes it back, and nothing that is derived is
    /// old because of it.
    sections::Numbering numbering;
    std::vector<PinnedMark> pinnedMarks;
    std::vector<BannedWater> banned;           ///< In the order in which it was banned.
    std::vector<BeliefProfile> beliefProfiles; ///< In the order in which they were saved.
    DayByHand dayByHand;
    marks::Plan plan;
    std::vector<BoatSheet> sheets; ///< By day, one for a day.
    logbook::KeptLog log;          ///< By start.
    friend bool operator==(const Water&, const Water&) = default;
};

/// The parts of a water that change and are kept together: an edit says which of them it touched.
enum class Part {
    facts, ///< Name, clock, chart level, frame, places, settings.
    shoreline,
    days, ///< Survey days and their soundings.
    leadLine,
    weedNotes,
    houseRules,
    sections,  ///< Section names, and what the user changed about the division.
    numbering, ///< The numbers of the sections: of no edit, but of every map.
    plan,      ///< Plan, pinned marks, banned water, profiles of beliefs, the day by hand.
    sheets,
    log,
};

inline constexpr std::array allParts{
    Part::facts,    Part::shoreline, Part::days, Part::leadLine, Part::weedNotes, Part::houseRules,
    Part::sections, Part::numbering, Part::plan, Part::sheets,   Part::log};

/// An id that no day, lead line sounding, weed note, stay or fish of the water has yet.
[[nodiscard]] std::int64_t freshId(const Water& water);

/// A day gone by is no day to plan for: a plan for one before today becomes a plan for tomorrow, by
/// the water's clock. Its wind was forecast for the day gone by and is not known of the other.
/// \return whether it did.
bool planFromTomorrow(Water& water, units::Moment now);

/// Lays the frame round the shore, else round the soundings, if the water has none yet.
/// \return the error of WaterFrame::around().
[[nodiscard]] base::Result<void> layFrame(Water& water);

} // namespace water
