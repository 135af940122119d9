// SPDX-License-Identifier: GPL-3.0-or-later
// Feeds every file of the folders given to the entry function of one fuzzer: the corpus as a test.
// A promise that does not hold ends the process.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size);

int main(int count, char** folders) {
    std::vector<std::filesystem::path> files;
    for (int i = 1; i < count; ++i) {
        if (!std::filesystem::is_directory(folders[i])) {
            std::fprintf(stderr, "no such folder: %s\n", folders[i]);
            return 1;
        }
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folders[i])) {
            if (entry.is_regular_file()) {
                files.push_back(entry.path());
            }
        }
    }
    std::ranges::sort(files);
    for (const std::filesystem::path& path : files) {
        std::fprintf(stderr, "%s\n", path.c_str()); // The last one named is the one that failed.
        std::ifstream file(path, std::ios::binary);
        const std::vector<char> bytes{std::istreambuf_iterator<char>(file), {}};
        const std::vector<std::uint8_t> input(bytes.begin(), bytes.end());
        LLVMFuzzerTestOneInput(input.data(), input.size());
    }
    std::fprintf(stderr, "%zu files replayed\n", files.size());
    return files.empty() ? 1 : 0;
}
