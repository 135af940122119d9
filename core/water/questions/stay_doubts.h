// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/length.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <string>
#include <variant>
#include <vector>

namespace water {

// What of a stay can hardly be as it was noted, as values. The sentences are made by app/wording.

/// It ends later than now.
struct StayInTheFuture {
    friend bool operator==(const StayInTheFuture&, const StayInTheFuture&) = default;
};
/// It is longer than a day.
struct StayOverADay {
    std::chrono::hours hours{};
    friend bool operator==(const StayOverADay&, const StayOverADay&) = default;
};
/// The fishery is closed at that time of the year.
struct StayOutOfSeason {
    friend bool operator==(const StayOutOfSeason&, const StayOutOfSeason&) = default;
};
/// More rods than the house allows, or than ride in the boat.
struct StayOfManyRods {
    int rods = 0;
    int usual = 0; ///< The house rule, or the rods of the tackle.
    bool isRule = false;
    friend bool operator==(const StayOfManyRods&, const StayOfManyRods&) = default;
};
/// Fish that were taken before the stay or after it.
struct FishBesideStay {
    std::size_t fish = 0;
    friend bool operator==(const FishBesideStay&, const FishBesideStay&) = default;
};
/// It lies on land, or on another lake.
struct StayOffTheWater {
    units::Length distance; ///< To the shore of this one.
    friend bool operator==(const StayOffTheWater&, const StayOffTheWater&) = default;
};
/// The fishery lets nobody fish there.
struct StayInClosedWater {
    std::string name; ///< May be empty.
    friend bool operator==(const StayInClosedWater&, const StayInClosedWater&) = default;
};
/// At the same time the log has the boat elsewhere, or there in another stay.
struct StayOverOther {
    units::Moment start; ///< Of the other.
    units::Moment end;
    friend bool operator==(const StayOverOther&, const StayOverOther&) = default;
};

using StayDoubt = std::variant<StayInTheFuture, StayOverADay, StayOutOfSeason, StayOfManyRods,
                               FishBesideStay, StayOffTheWater, StayInClosedWater, StayOverOther>;

/// The doubts about a stay, of the log or not yet in it, in the order above; none where all can be.
/// \param derived for its outline: without one nothing is said of the place.
[[nodiscard]] std::vector<StayDoubt> doubtsAbout(const logbook::Stay& stay, const Water& water,
                                                 const Derived& derived, units::Moment now);

} // namespace water
