// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_weed_notes.h"

#include "core/base/number_text.h"
#include "core/readers/table_records.h"

namespace readers {

namespace {

/// No water plant is longer than giant kelp (some 50 m).
constexpr double tallest_m = 60.0;

} // namespace

base::Result<ReadWeedNotes> readWeedNotes(const std::filesystem::path& path,
                                          base::Progress& progress) {
    auto records = TableRecords::open(path, {"lon", "lat", "kind"});
    if (!records) {
        return std::unexpected(records.error());
    }
    progress.begin("reading the weed notes");
    ReadWeedNotes read;
    while (records->next(read.report)) {
        const auto place = records->place();
        const auto growth = weed::growthNamed(base::lowerCase(records->text("kind")));
        const auto height_m = records->number("height_m");
        const std::string seen = records->text("seen");
        const auto day = units::dayFrom(seen);
        if (!place) {
            read.report.refuse("no_position", records->line(), records->row());
        } else if (!growth) {
            read.report.refuse("unknown_kind", records->line(), records->row());
        } else if (!height_m && !records->text("height_m").empty()) {
            read.report.refuse("not_a_number", records->line(), records->row());
        } else if (height_m && *height_m < 0.0) {
            read.report.refuse("negative_height", records->line(), records->row());
        } else if (height_m && *height_m > tallest_m) {
            read.report.refuse("impossible_height", records->line(), records->row());
        } else if (!day && !seen.empty()) {
            read.report.refuse("no_day", records->line(), records->row());
        } else {
            weed::WeedNote note;
            note.id = weed::WeedNoteId(static_cast<std::int64_t>(read.notes.size()) + 1);
            note.place = *place;
            note.growth = *growth;
            note.seen = day;
            if (height_m) {
                note.height = units::Length::metres(*height_m);
            }
            read.notes.push_back(note);
        }
    }
    read.report.used = read.notes.size();
    if (read.notes.empty()) {
        return base::fail(
            base::ErrorKind::unusableInput, "it has no usable row: " + read.report.refusedText(),
            path.string(),
            "give rows of lon, lat, kind (none, thin, thick), height_m and seen (2026-08-20)");
    }
    return read;
}

} // namespace readers
