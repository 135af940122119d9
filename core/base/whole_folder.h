// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace base {

/// A set of files that appears in its folder whole or not at all: it is written elsewhere on the
/// same disk, and put in its place at once. Where the folder holds nothing but an older set, the
/// two folders are exchanged. Where it holds other things, or cannot be exchanged, the files go in
/// one by one: the last one, that stands for the whole, is taken away first and comes back last.
/// What was not put in place is removed, and so is what runs that were killed have left.
class PendingFolder {
public:
    /// \param ours the names of all files that such a set may hold; others in the folder are never
    /// touched. \param last the one of them that every set has.
    PendingFolder(std::filesystem::path wanted, std::vector<std::string_view> ours,
                  std::string_view last);
    ~PendingFolder();
    PendingFolder(const PendingFolder&) = delete;
    PendingFolder& operator=(const PendingFolder&) = delete;
    PendingFolder(PendingFolder&&) = delete;
    PendingFolder& operator=(PendingFolder&&) = delete;

    /// Makes the place to write in. \return unwritableOutput where none can be made, or where
    /// something of our names in the folder is no regular file.
    [[nodiscard]] Result<void> begin();
    /// Where to write, after begin(): a folder of its own.
    [[nodiscard]] const std::filesystem::path& beside() const { return beside_; }
    /// Puts all that was written in its place; files of an older set that the new one lacks are
    /// gone. \return unwritableOutput.
    [[nodiscard]] Result<void> putInPlace();

private:
    [[nodiscard]] bool isOurs(const std::string& name) const;
    [[nodiscard]] bool holdsOnlyOurs() const;
    [[nodiscard]] Result<void> lookAtOlder() const;
    [[nodiscard]] bool exchange();
    [[nodiscard]] Result<void> moveIn();
    [[nodiscard]] Result<void> moveIn(const std::string& name);

    std::filesystem::path wanted_;
    std::vector<std::string_view> ours_;
    std::string last_;
    std::filesystem::path beside_;
    std::vector<std::filesystem::path> made_; ///< Folders above, made for this, the highest first.
    bool isExchanged_ = false; ///< The new set goes into the place of the whole folder.
    bool isInPlace_ = false;
};

} // namespace base
