// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace rules {

/// One rule of the tree that one place does not keep.
struct Breach {
    std::string rule; ///< Its short name: "arrow", "verb", "fence", "length", "licence", "name",
                      ///< "top level", "left open", "said".
    std::string file; ///< From the root, with slashes.
    int line = 0;     ///< From 1; 0 where it concerns the whole file.
    std::string what; ///< What is wrong there, for people.
};

/// "file:line: [rule] what"
[[nodiscard]] std::string sentence(const Breach& breach);

/// The files that belong to the tree below root, from root, with slashes, sorted: what git tracks
/// or would add where root is the top of a checkout, otherwise every file outside build and .git.
[[nodiscard]] std::vector<std::string> filesOfTree(const std::filesystem::path& root);

/// Checks each of the files against every rule. The arrows are read from core/CMakeLists.txt and
/// app/CMakeLists.txt below root.
[[nodiscard]] std::vector<Breach> findBreaches(const std::filesystem::path& root,
                                               const std::vector<std::string>& files);

} // namespace rules
