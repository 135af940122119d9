// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/whole_day/batch_run.h"

#include <cstdlib>
#include <fstream>
#include <sstream>

#include <nlohmann/json.hpp>
#include <sys/wait.h>
#include <unistd.h>

namespace whole_day {

namespace {

std::string textOf(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::string quoted(const std::string& word) {
    std::string out = "'";
    for (const char c : word) {
        out += c == '\'' ? std::string("'\\''") : std::string(1, c);
    }
    return out + "'";
}

} // namespace

BatchRun runBatch(const std::vector<std::string>& arguments) {
    static int runs = 0;
    const std::filesystem::path scratch = MEREMARK_SCRATCH_DIR;
    std::filesystem::create_directories(scratch);
    const std::string stem =
        (scratch / ("run-" + std::to_string(getpid()) + '-' + std::to_string(++runs))).string();
    std::string command = quoted(MEREMARK_BATCH);
    for (const std::string& argument : arguments) {
        command += ' ' + quoted(argument);
    }
    command += " >" + quoted(stem + ".out") + " 2>" + quoted(stem + ".err") + " </dev/null";
    const int status = std::system(command.c_str());
    BatchRun run{WIFEXITED(status) ? WEXITSTATUS(status) : -1, textOf(stem + ".out"),
                 textOf(stem + ".err")};
    std::filesystem::remove(stem + ".out");
    std::filesystem::remove(stem + ".err");
    return run;
}

std::filesystem::path freshFolder(const std::string& name) {
    const std::filesystem::path folder = std::filesystem::path(MEREMARK_SCRATCH_DIR) / name;
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    return folder;
}

std::string sampleFile(const std::string& name) {
    return (std::filesystem::path(MEREMARK_SAMPLE_DIR) / "files" / name).string();
}

std::filesystem::path openData(const std::string& name) {
    return std::filesystem::path(MEREMARK_SHARED_DIR) / "data" / name;
}

nlohmann::json readJson(const std::filesystem::path& path) {
    return nlohmann::json::parse(textOf(path));
}

void writeText(const std::filesystem::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
}

} // namespace whole_day
