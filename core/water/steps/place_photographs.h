// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/water/document/water.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace water {

/// Where a photograph belongs in the log.
struct PlacedPhotograph {
    enum class Is {
        ofFish,    ///< Taken within ten minutes of a fish of the stay.
        ofStay,    ///< Taken during a stay, of no fish in particular.
        known,     ///< The log has it there already.
        taken,     ///< Its fish or stay has another photograph already.
        elsewhere, ///< Taken at no stay of the log.
        undated,   ///< It does not say when it was taken.
    };
    std::string path; ///< As it is kept: from the water's folder where it lies in it.
    std::optional<units::Moment> time;
    std::optional<geo::LonLat> place;
    Is is = Is::undated;
    logbook::StayId stay; ///< Given where it belongs to one.
    logbook::FishId fish; ///< Given where it belongs to one.
};

/// Looks for the stay and the fish of each photograph, by when it was taken: a stay holds what was
/// taken from its begin to a quarter of an hour after its end (fish are weighed, and pictures
/// taken, on the way too; our choice, no source); of several stays, the one nearest to where it was
/// taken. \param folder of the water file; empty where it has none. \return unusableInput of the
/// first file that is no picture; cancelled.
[[nodiscard]] base::Result<std::vector<PlacedPhotograph>>
placePhotographs(const Water& water, const std::vector<std::filesystem::path>& files,
                 const std::filesystem::path& folder, base::Progress& progress);

} // namespace water
