// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_lead_line.h"

#include "core/base/number_text.h"
#include "core/readers/soundings_file.h"
#include "core/readers/table_records.h"

namespace readers {

base::Result<ReadLeadLine> readLeadLine(const std::filesystem::path& path,
                                        base::Progress& progress) {
    auto records = TableRecords::open(path, {"lon", "lat", "depth_m"});
    if (!records) {
        return std::unexpected(records.error());
    }
    progress.begin("reading the lead line");
    ReadLeadLine read;
    while (records->next(read.report)) {
        const auto place = records->place();
        const auto depth_m = records->number("depth_m");
        const std::string bottom = base::lowerCase(records->text("bottom"));
        if (!place) {
            read.report.refuse("no_position", records->line(), records->row());
        } else if (!depth_m) {
            read.report.refuse("no_depth", records->line(), records->row());
        } else if (*depth_m < 0.0) {
            read.report.refuse("negative_depth", records->line(), records->row());
        } else if (*depth_m > deepestOnEarth_m) {
            read.report.refuse("impossible_depth", records->line(), records->row());
        } else if (!bottom.empty() && !soundings::bottomNamed(bottom)) {
            read.report.refuse("unknown_bottom", records->line(), records->row());
        } else {
            const soundings::LeadLineId id(static_cast<std::int64_t>(read.soundings.size()) + 1);
            read.soundings.push_back(
                {id, *place, units::Depth::metres(*depth_m), soundings::bottomNamed(bottom)});
        }
    }
    read.report.used = read.soundings.size();
    if (read.soundings.empty()) {
        return base::fail(base::ErrorKind::unusableInput,
                          "it has no usable row: " + read.report.refusedText(), path.string(),
                          "give rows of lon, lat, depth_m and bottom");
    }
    return read;
}

} // namespace readers
