// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/whole_day/batch_run.h"

#include <csignal>
#include <cstdlib>
#include <fstream>
#include <sstream>

#include <fcntl.h>
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

/// In the child: gives a descriptor another file.
void lead(int descriptor, const std::string& path, int flags) {
    const int file = open(path.c_str(), flags, 0600);
    if (file < 0 || dup2(file, descriptor) < 0) {
        _exit(127);
    }
}

} // namespace

StartedBatch::StartedBatch(const std::vector<std::string>& arguments) {
    static int runs = 0;
    const std::filesystem::path scratch = MEREMARK_SCRATCH_DIR;
    std::filesystem::create_directories(scratch);
    stem_ = (scratch / ("run-" + std::to_string(getpid()) + '-' + std::to_string(++runs))).string();
    std::vector<std::string> words{MEREMARK_BATCH};
    words.insert(words.end(), arguments.begin(), arguments.end());
    std::vector<char*> argv;
    for (std::string& word : words) {
        argv.push_back(word.data());
    }
    argv.push_back(nullptr);
    process_ = fork();
    if (process_ == 0) {
        lead(STDIN_FILENO, "/dev/null", O_RDONLY);
        lead(STDOUT_FILENO, stem_ + ".out", O_WRONLY | O_CREAT | O_TRUNC);
        lead(STDERR_FILENO, stem_ + ".err", O_WRONLY | O_CREAT | O_TRUNC);
        execv(argv[0], argv.data());
        _exit(127);
    }
}

StartedBatch::~StartedBatch() {
    if (!isOver_ && process_ > 0) {
        kill(process_, SIGKILL);
        static_cast<void>(finish());
    }
    std::filesystem::remove(stem_ + ".out");
    std::filesystem::remove(stem_ + ".err");
}

std::string StartedBatch::errorSoFar() const {
    return textOf(stem_ + ".err");
}

void StartedBatch::take(int status) {
    isOver_ = true;
    exitCode_ = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

bool StartedBatch::isRunning() {
    int status = 0;
    if (!isOver_ && waitpid(process_, &status, WNOHANG) == process_) {
        take(status);
    }
    return !isOver_;
}

BatchRun StartedBatch::finish() {
    int status = 0;
    if (!isOver_ && waitpid(process_, &status, 0) == process_) {
        take(status);
    }
    return {exitCode_, textOf(stem_ + ".out"), textOf(stem_ + ".err")};
}

BatchRun runBatch(const std::vector<std::string>& arguments) {
    return StartedBatch(arguments).finish();
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
