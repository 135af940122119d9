// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/readers/soundings_file.h"
#include "core/units/moment.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace batch {

/// The options of `sketch` as given.
struct SketchOptions {
    using Path = std::filesystem::path;
    std::vector<Path> soundings;
    Path shore, water, weed, leadLine, surveyDays, facts, houseRules;
    Path grid, trust, contours, picture, report;
    std::optional<double> cell_m, limit_m, sectionArea_m2, draft_m, level_m, chartLevel_m,
        temperature_c, soundSpeed_m_s, secchi_m;
    std::string bandEdges, columns, unit, crs;
    bool tieDays = false;
    bool takeDelays = false;
    int nextMinutes = 120;
    double wait_s = 0.0;
};

/// Lays them on the verb; what is given lands in `options`, which must outlive it.
void laySketchOptions(CLI::App& verb, SketchOptions& options);

/// Whether all files that the options name may be written: checkOutputs().
[[nodiscard]] base::Result<void> checkFiles(const SketchOptions& options);

/// How the files of soundings are to be read: columns, unit and coordinates as the options say.
/// \param clock of the water. \return wrongUse, naming the option.
[[nodiscard]] base::Result<readers::SoundingFileSettings> fileSettings(const SketchOptions& options,
                                                                       const units::Clock& clock);

} // namespace batch
