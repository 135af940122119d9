// SPDX-License-Identifier: GPL-3.0-or-later
// A case is a list of changes to a water file that is whole: two bytes of page (of 256 parts of
// it), two of place in the page, how many bytes, and these. So the fuzzer need not find a database
// first.
#include "core/geo/outline.h"
#include "core/store/rescue.h"
#include "core/store/water_store.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"
#include "tests/support/found_water.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

namespace {

base::Progress quiet;

std::vector<std::uint8_t> wholeFile() {
    const fuzz::InputFile empty(nullptr, 0);
    const std::filesystem::path path = empty.path().parent_path() / "whole.gpkg";
    {
        const support::FoundWater known;
        auto store = store::create(path);
        fuzz::promise(
            store && (*store)->saveWhole(known.water, known.found, known.told(), quiet).has_value(),
            "a whole file can be made");
    }
    std::ifstream file(path, std::ios::binary);
    std::vector<std::uint8_t> bytes{std::istreambuf_iterator<char>(file), {}};
    std::filesystem::remove(path);
    return bytes;
}

void changeBytes(std::vector<std::uint8_t>& file, const std::uint8_t* bytes, std::size_t size) {
    constexpr std::size_t head = 5;
    for (std::size_t at = 0; at + head < size;) {
        const std::size_t page = bytes[at] * 256U + bytes[at + 1];
        const std::size_t place = bytes[at + 2] * 256U + bytes[at + 3];
        const std::size_t count = std::min<std::size_t>(bytes[at + 4] + 1U, size - at - head);
        const std::size_t first = (page * 4096U + place % 4096U) % file.size();
        for (std::size_t i = 0; i < count && first + i < file.size(); ++i) {
            file[first + i] = bytes[at + head + i];
        }
        at += head + count;
    }
}

void checkRescue(const std::filesystem::path& path) {
    const std::filesystem::path to = path.parent_path() / "rescued.gpkg";
    const auto rescued = store::rescue(path, to, quiet);
    if (!rescued) {
        fuzz::checkRefusal(rescued.error());
        return;
    }
    fuzz::promise(rescued->held.isWhole(), "what was rescued is whole");
    std::filesystem::remove(to);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    static const std::vector<std::uint8_t> whole = wholeFile();
    std::vector<std::uint8_t> changed = whole;
    changeBytes(changed, bytes, size);
    const fuzz::InputFile file(changed.data(), changed.size());
    checkRescue(file.path());
    auto store = store::open(file.path(), store::Purpose::looking);
    if (!store) {
        fuzz::checkRefusal(store.error());
        return 0;
    }
    const auto water = (*store)->load(quiet);
    const auto report = (*store)->check(quiet);
    fuzz::promise(report.has_value(), "a file that opens can be checked");
    if (!water) {
        fuzz::checkRefusal(water.error());
        fuzz::promise(!report->isWhole() || (*store)->opening() == store::Opening::newer,
                      "check finds what cannot be read");
        return 0;
    }
    if (water->frame && !water->shoreline.empty()) {
        if (const auto outline = geo::Outline::make(water->shoreline, *water->frame)) {
            const auto drawing = (*store)->loadDrawing(*outline);
            fuzz::promise(drawing.has_value(), "a drawing that is not whole is none");
        }
    }
    return 0;
}
