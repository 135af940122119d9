// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"
#include "core/water/steps/near_place.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

// Places as somebody names them who has lain there.
namespace days::looking_back {

struct KnownPlace {
    QString name;
    geo::LonLat place;
    std::optional<int> rank; ///< Of a mark of the day: "3" alone means it, too.
};

/// A mark of the day by its number and what it is called: "3 Gannick Bar", "3".
[[nodiscard]] QString numbered(int rank, const QString& called);

/// The marks of the day by number, "3 Gannick Bar", then own marks and named places. \param planned
/// may be null.
[[nodiscard]] std::vector<KnownPlace> knownPlaces(const water::Water& water,
                                                  const water::PlannedDay* planned,
                                                  const wording::Words& words);
[[nodiscard]] QStringList namesOf(const std::vector<KnownPlace>& places);

/// A place by its name, in any case, by a mark's number, or as a position. Nothing where the text
/// is none of them.
[[nodiscard]] std::optional<geo::LonLat> placeMeant(const QString& text,
                                                    const std::vector<KnownPlace>& places);

/// What places are called on a water: by an own mark within a boat's swing, else by the named place
/// near them with the way from there. Made once for many places.
class PlaceNames {
public:
    PlaceNames() = default;
    explicit PlaceNames(const water::Water& water);

    /// Empty where nothing is near.
    [[nodiscard]] QString of(geo::LonLat place, const wording::Words& words) const;

private:
    std::optional<geo::WaterFrame> frame_;
    std::vector<water::PlacedName> marks_;
    std::vector<water::PlacedName> places_;
};

} // namespace days::looking_back
