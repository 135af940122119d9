// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/stamp.h"
#include "core/water/document/water.h"

#include <bit>
#include <functional>
#include <optional>
#include <vector>

namespace water {

/// What each value gives to a stamp. Every struct is taken apart by name: a member that is added
/// does not compile until it is taken, or said here to be none of the stamp's business.

/// Members that are known and left out.
template <class... Members>
constexpr void leaveOut(const Members&... /*members*/) {}

/// Absent is told from every value.
template <class T, class Number>
void takeIfAny(Stamp& stamp, const std::optional<T>& value, const Number& number) {
    stamp.take(value.has_value());
    if (value) {
        stamp.take(std::invoke(number, *value));
    }
}

void take(Stamp& stamp, geo::LonLat place);
void take(Stamp& stamp, const std::vector<geo::LonLat>& places);
void take(Stamp& stamp, const std::vector<geo::LonLatPiece>& pieces);
/// Soundings, and all that was true that day; not what it is called.
void take(Stamp& stamp, const soundings::SurveyDay& day);
void take(Stamp& stamp, const StructureChoice& choice);
void take(Stamp& stamp, const sections::SectionName& name);
void take(Stamp& stamp, const sections::SectionChange& change);
void take(Stamp& stamp, const contours::Bands& bands);
void take(Stamp& stamp, const logbook::HouseRules& rules);
void take(Stamp& stamp, const std::vector<BannedWater>& banned);
void take(Stamp& stamp, const DayByHand& day);
void take(Stamp& stamp, const LaidByHand& laid);
void take(Stamp& stamp, const marks::Plan& plan);

/// What the drawing takes of the lead line: where, and how deep.
[[nodiscard]] Stamp depthsOf(const base::SharedList<soundings::LeadLineSounding>& leadLine);
/// What the weed takes of it: what the lead brought up.
[[nodiscard]] Stamp bottomsOf(const base::SharedList<soundings::LeadLineSounding>& leadLine);
[[nodiscard]] Stamp stampOf(const base::SharedList<weed::WeedNote>& notes);
[[nodiscard]] Stamp stampOf(const base::SharedList<geo::LonLatPiece>& shoreline);
/// What a plan takes of the log: effort and fish by place, hour and conditions. The same for the
/// same stays, whatever chunks the log lies in.
[[nodiscard]] Stamp effortOf(const logbook::KeptLog& log);

} // namespace water
