// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/marks/told_marks.h"
#include "core/store/check_report.h"
#include "core/store/owner.h"
#include "core/store/write_right.h"
#include "core/surface/drawn_water.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <array>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace store {

/// What a path leads to, before anything is opened for work.
enum class FileState {
    missing,    ///< There is no such file.
    unreadable, ///< It is there, and we may not read it.
    notAWater,  ///< Something else: another kind of file, another program's GeoPackage.
    damaged,    ///< It was a water file and is not whole.
    newer,      ///< A later version of the program wrote it; this one only looks at it.
    older,      ///< An earlier version wrote it; opening brings it up to date.
    inUse,      ///< Another program is just writing it, for longer than we wait.
    current,
};

/// "current", "newer" ...
[[nodiscard]] std::string_view nameOf(FileState state);

/// How opening went.
enum class Opening {
    created,
    current,
    upgraded,
    newer ///< To be looked at: what a later version keeps is shown as far as this one knows it.
};

/// Of the steps after the soundings, those whose results are kept beside the drawing, so that an
/// opened water need not work them out again. The others are quick, or change with the day.
inline constexpr std::array keptSteps{water::Step::reduce, water::Step::bands,
                                      water::Step::structure, water::Step::sections};

/// A drawing that was kept, and the stamp of what it was drawn from.
struct KeptDrawing {
    surface::DrawnWater drawn;
    water::Stamp stamp;
};

/// The file of one water. Whatever save... was given is there whole after it has returned without
/// an error, and the state before it is there whole in every other case: error, kill, power cut. A
/// save that failed may be tried again once its reason has gone.
///
/// One opening at a time may write. Each save is one transaction on the file as it is at that
/// moment, and is refused where the file is no longer as it was when this store last loaded or
/// saved it: nothing that another program has saved is ever overwritten.
///
/// One thread at a time; isReadOnly(), owner(), path() and hasChanged() may be asked by another one
/// while a save or load is under way. Errors name the file: unwritableOutput (disk full, closed to
/// us, moved away), waterInUse, waterChanged, damagedWater (not whole, contradicts itself),
/// unusableInput, cancelled.
class WaterStore {
public:
    WaterStore() = default;
    WaterStore(const WaterStore&) = delete;
    WaterStore& operator=(const WaterStore&) = delete;
    WaterStore(WaterStore&&) = delete;
    WaterStore& operator=(WaterStore&&) = delete;
    virtual ~WaterStore() = default;

    [[nodiscard]] virtual Opening opening() const = 0;
    [[nodiscard]] virtual const std::filesystem::path& path() const = 0;
    /// True where this store cannot save: the file may only be read, somebody else has it, or it
    /// was opened to be looked at.
    [[nodiscard]] virtual bool isReadOnly() const = 0;
    /// Who keeps us from writing; nothing where nobody does. Once that program lets go, whoever
    /// opens the water again may write.
    [[nodiscard]] virtual std::optional<Owner> owner() const = 0;
    /// True where somebody else has saved the water since this store last loaded or saved it; false
    /// while a save is under way. Cheap and without waiting, to be asked every second or so.
    /// \return unusableInput where the file was moved or deleted.
    [[nodiscard]] virtual base::Result<bool> hasChanged() = 0;

    /// Facts and shoreline alone, which is quick: enough to show the drawing kept while load()
    /// reads the rest. Changes nothing of what this store takes the file for.
    [[nodiscard]] virtual base::Result<water::Water> loadShore() = 0;
    /// Everything that was saved, equal to what it was.
    [[nodiscard]] virtual base::Result<water::Water> load(base::Progress& progress) = 0;
    /// Keeps these parts of the water, in one transaction; of the days, only those that changed are
    /// written anew. The others stay as they are in the file.
    [[nodiscard]] virtual base::Result<void> save(const water::Water& water,
                                                  std::span<const water::Part> parts,
                                                  base::Progress& progress) = 0;

    /// Keeps the depth grid and its trust as gridded coverages in the water's frame.
    [[nodiscard]] virtual base::Result<void> saveDrawing(const surface::DrawnWater& drawn,
                                                         const geo::WaterFrame& frame,
                                                         water::Stamp stamp) = 0;
    /// The drawing kept, on a mask laid anew from the outline; nothing where there is none, or
    /// where it contradicts itself or the outline: a drawing can always be made again.
    [[nodiscard]] virtual base::Result<std::optional<KeptDrawing>>
    loadDrawing(const geo::Outline& outline) = 0;

    /// Keeps what was found, so that any GIS shows it: reduced depths and verdicts, contours,
    /// bands, zones, sections, marks; nothing of that is ever read back. Keeps besides, in our own
    /// form, what loadResults() gives. Whatever `found` does not hold is emptied.
    [[nodiscard]] virtual base::Result<void> saveFound(const water::Water& water,
                                                       const water::Derived& found,
                                                       const marks::ToldMarks& told,
                                                       base::Progress& progress) = 0;

    /// Puts into `derived` what was kept of these steps and is made from just this water. What is
    /// not whole, or contradicts the water, is left out: it can always be made again. \param
    /// derived with outline and drawing as they were kept.
    [[nodiscard]] virtual base::Result<void> loadResults(const water::Water& water,
                                                         std::span<const water::Step> steps,
                                                         water::Derived& derived) = 0;

    /// save() of all parts, saveDrawing() and saveFound() in one transaction: quicker for a file
    /// that is filled at once, as each sounding is written once.
    [[nodiscard]] virtual base::Result<void> saveWhole(const water::Water& water,
                                                       const water::Derived& found,
                                                       const marks::ToldMarks& told,
                                                       base::Progress& progress) = 0;

    /// Whether the file is whole and agrees with itself. An error only where that cannot be told.
    [[nodiscard]] virtual base::Result<CheckReport> check(base::Progress& progress) = 0;
};

class Copies;

/// Looks without changing anything.
[[nodiscard]] FileState stateOf(const std::filesystem::path& path);

/// Who may write this water file at the moment; nothing where nobody has it. Takes the right for an
/// instant itself.
[[nodiscard]] std::optional<Owner> ownerOf(const std::filesystem::path& path);

/// Opens a water file; one of an older version is brought up to date, after a copy of it was taken.
/// One that may only be read, or that somebody else has open for writing, opens read-only. A second
/// opening by this same process is somebody else too. One that a newer version keeps opens
/// read-only, whatever the purpose. \param copies where that copy goes; null:
/// none is taken. \return unusableInput (missing, not a water), damagedWater,
/// waterInUse while another program is writing it, unwritableOutput where an older file may only be
/// read.
[[nodiscard]] base::Result<std::unique_ptr<WaterStore>> open(const std::filesystem::path& path,
                                                             Purpose purpose = Purpose::writing,
                                                             Copies* copies = nullptr);

/// A new, empty water file. Where its first save fails and none after it works, it goes with its
/// store. \return unwritableOutput where the folder is closed to us or something of that name is
/// there.
[[nodiscard]] base::Result<std::unique_ptr<WaterStore>> create(const std::filesystem::path& path);

/// The version of SQLite in use, for --version.
[[nodiscard]] std::string sqliteVersion();

} // namespace store
