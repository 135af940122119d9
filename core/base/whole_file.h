// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <string_view>

namespace base {

/// A file that appears whole or not at all: it is written under a name beside the wanted one and
/// then put in its place, over whatever stood there: through a link, and with the mode that the
/// older file had. What was not put in place is removed, and so is what runs that were killed have
/// left in the folder.
class PendingFile {
public:
    explicit PendingFile(const std::filesystem::path& wanted);
    ~PendingFile();
    PendingFile(const PendingFile&) = delete;
    PendingFile& operator=(const PendingFile&) = delete;
    PendingFile(PendingFile&&) = delete;
    PendingFile& operator=(PendingFile&&) = delete;

    /// Where to write; in the same folder, and no other run of ours uses the name.
    [[nodiscard]] const std::filesystem::path& beside() const { return beside_; }
    /// Brings what was written on to the disk and gives it the wanted name.
    /// \return unwritableOutput where the disk says no; what stood there before still stands then.
    [[nodiscard]] Result<void> putInPlace();

private:
    std::filesystem::path wanted_;
    std::filesystem::path beside_;
    bool isInPlace_ = false;
};

/// Writes `content` as a whole file. \return unwritableOutput where the folder is not there, is
/// closed to us, or the disk is full; an older file of that name still stands then.
[[nodiscard]] Result<void> writeWholeFile(const std::filesystem::path& path,
                                          std::string_view content);

} // namespace base
