// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/store/water_store.h"
#include "core/units/moment.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace store {

/// How much a copy holds, to tell one from another.
struct CopyCounts {
    std::size_t surveyDays = 0;
    std::size_t soundings = 0;
    std::size_t stays = 0;
    std::size_t fish = 0;  ///< Landed fish and lost runs.
    std::size_t notes = 0; ///< Lead line soundings, weed notes, own marks.
    friend bool operator==(const CopyCounts&, const CopyCounts&) = default;
};

/// A copy of a water, taken at a moment.
struct Copy {
    std::filesystem::path file;
    units::Moment taken;
    std::uintmax_t bytes = 0;
};

/// The rule by which copies are kept: of the last day one an hour, of the last week one a day,
/// before that one a week, and of all these as many of the newest as have room. The newest stays in
/// any case.
struct CopyRule {
    std::chrono::seconds between = std::chrono::hours(1);  ///< Two copies taken by themselves.
    std::uintmax_t mostBytes = std::uintmax_t{512} << 20U; ///< Of all copies of one water.
};

/// Those that the rule lets go. \param copies the newest first.
[[nodiscard]] std::vector<Copy> thinnedOut(const std::vector<Copy>& copies, units::Moment now,
                                           const CopyRule& rule);

/// Copies of waters, in a folder of the user's own: beside each other, each water in a folder that
/// is found again by the path of its file.
class Copies {
public:
    explicit Copies(std::filesystem::path folder, CopyRule rule = {});

    /// The newest first.
    [[nodiscard]] std::vector<Copy> of(const std::filesystem::path& water) const;
    /// Copies the water as it stands in its file, by the database's own backup, whoever is at it,
    /// and thins out the older ones. A file that is not whole gives no copy. \return
    /// damagedWater, waterInUse, unwritableOutput, unusableInput.
    [[nodiscard]] base::Result<Copy> take(const std::filesystem::path& water, units::Moment now);
    /// The same, where the last one is an hour old and the water has been saved since; nothing
    /// otherwise.
    [[nodiscard]] base::Result<std::optional<Copy>> takeIfDue(const std::filesystem::path& water,
                                                              units::Moment now);
    /// Lays the copy in the place of the water's file, which is copied itself before; one that is
    /// not whole is kept beside, under a name that says so. \return waterInUse where anybody has
    /// the water open to change it; unwritableOutput; damagedWater where the copy is not whole.
    [[nodiscard]] base::Result<void> goBack(const Copy& copy, const std::filesystem::path& water,
                                            units::Moment now);

private:
    [[nodiscard]] std::filesystem::path folderOf(const std::filesystem::path& water) const;

    std::filesystem::path folder_;
    CopyRule rule_;
};

/// Where this user's copies lie: beside what the desk keeps of him (XDG Base Directory
/// Specification); empty where the system says no place.
[[nodiscard]] std::filesystem::path usualCopiesFolder();

/// open(), with a copy among the usual ones before a file of an older version is brought up to
/// date: a step that goes wrong never changes the only copy.
[[nodiscard]] base::Result<std::unique_ptr<WaterStore>>
openWithCopy(const std::filesystem::path& path, Purpose purpose = Purpose::writing);

/// What a water file holds, without reading all of it.
[[nodiscard]] base::Result<CopyCounts> countsIn(const std::filesystem::path& water);

} // namespace store
