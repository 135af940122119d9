// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readers/reading_report.h"
#include "core/surface/survey_line.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

namespace batch {

/// One file of soundings as it was read.
struct FileRead {
    std::string file;
    readers::ReadingReport report;
};

/// What `sketch` did, for its report.
struct SketchDone {
    std::vector<FileRead> files;
    std::optional<surface::SurveyTrip> nextLines;
    double readSeconds = 0.0;
    double writeSeconds = 0.0;
    std::vector<std::string> notes;
};

/// The report of `sketch`; keys as the contract says, each with its unit.
[[nodiscard]] nlohmann::ordered_json
sketchReport(const water::Water& water, const water::Derived& derived, const SketchDone& done);

} // namespace batch
