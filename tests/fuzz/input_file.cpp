// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/input_file.h"

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <string>

namespace fuzz {

namespace {

/// Made once for the process, gone with it unless it crashes.
class Folder {
public:
    Folder() {
        const std::filesystem::path memory = "/dev/shm";
        const auto at =
            std::filesystem::is_directory(memory) ? memory : std::filesystem::temp_directory_path();
        std::string pattern = (at / "fuzz-XXXXXX").string();
        if (mkdtemp(pattern.data()) == nullptr) {
            std::perror("no folder for the cases");
            std::exit(1);
        }
        path_ = pattern;
    }
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    Folder(Folder&&) = delete;
    Folder& operator=(Folder&&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

} // namespace

InputFile::InputFile(const std::uint8_t* bytes, std::size_t size) {
    static const Folder folder;
    path_ = folder.path() / "case";
    std::ofstream file(path_, std::ios::binary | std::ios::trunc);
    for (std::size_t i = 0; i < size; ++i) {
        file.put(static_cast<char>(bytes[i]));
    }
    if (!file.flush()) {
        std::perror("the case cannot be written");
        std::exit(1);
    }
}

} // namespace fuzz
