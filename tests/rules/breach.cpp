// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/breach.h"

#include "tests/rules/checks.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <memory>
#include <set>

namespace rules {

namespace {

/// What a command prints; empty where it fails.
std::string outputOf(const std::string& command) {
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), pclose);
    std::string out;
    std::array<char, 4096> buffer{};
    for (std::size_t got = 0;
         pipe && (got = std::fread(buffer.data(), 1, buffer.size(), pipe.get())) > 0;) {
        out.append(buffer.data(), got);
    }
    return out;
}

std::vector<std::string> trackedFiles(const std::filesystem::path& root) {
    std::vector<std::string> files;
    const std::string out =
        outputOf("git -c core.quotePath=false -C '" + root.string() +
                 "' ls-files -z --cached --others --exclude-standard 2>/dev/null");
    for (std::size_t at = 0; at < out.size();) {
        const std::size_t end = std::min(out.find('\0', at), out.size());
        if (std::filesystem::exists(root / out.substr(at, end - at))) {
            files.push_back(out.substr(at, end - at));
        }
        at = end + 1;
    }
    return files;
}

std::vector<std::string> allFiles(const std::filesystem::path& root) {
    std::vector<std::string> files;
    std::filesystem::recursive_directory_iterator at(root);
    for (; at != std::filesystem::recursive_directory_iterator(); ++at) {
        const std::string name = at->path().filename().string();
        if (at->is_directory() && at.depth() == 0 && (name == "build" || name == ".git")) {
            at.disable_recursion_pending();
        } else if (at->is_regular_file()) {
            files.push_back(at->path().lexically_relative(root).generic_string());
        }
    }
    return files;
}

} // namespace

std::string sentence(const Breach& breach) {
    const std::string line = breach.line > 0 ? ":" + std::to_string(breach.line) : "";
    return breach.file + line + ": [" + breach.rule + "] " + breach.what;
}

std::vector<std::string> filesOfTree(const std::filesystem::path& root) {
    std::vector<std::string> files;
    if (std::filesystem::exists(root / ".git")) {
        files = trackedFiles(root);
    }
    if (files.empty()) {
        files = allFiles(root);
    }
    std::ranges::sort(files);
    return files;
}

std::vector<Breach> findBreaches(const std::filesystem::path& root,
                                 const std::vector<std::string>& files) {
    const Arrows arrows{
        layersIn(contentOf(root / "core/CMakeLists.txt"), "meremark_core_folder"),
        layersIn(contentOf(root / "app/CMakeLists.txt"), "meremark_app_folder"),
        layersIn(contentOf(root / "core/CMakeLists.txt"), "meremark_core_room"),
    };
    std::vector<Breach> breaches;
    checkTerms(root, files, breaches);
    for (const std::string& name : files) {
        checkTopLevel(name, breaches);
        if (!isText(name)) {
            continue;
        }
        const File file = read(root, name);
        checkLicence(file, breaches);
        checkLeftOpen(file, breaches);
        if (file.isCpp()) {
            checkArrows(file, arrows, breaches);
            checkFences(file, breaches);
            checkSaid(file, breaches);
            checkShape(file, breaches);
        }
    }
    return breaches;
}

} // namespace rules
