// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/planted.h"

#include "tests/rules/breach.h"
#include "tests/rules/layers.h"
#include "tests/rules/source_text.h"

#include <filesystem>
#include <map>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rules {

namespace {

const std::filesystem::path root = MEREMARK_SOURCE_DIR;

/// "core/water" of "core/water/steps/plan_day.cpp".
std::string folderOf(const std::string& file) {
    const std::size_t first = file.find('/');
    return file.substr(0, file.find('/', first == std::string::npos ? first : first + 1));
}

std::map<std::string, PlantedList> allLists() {
    std::map<std::string, PlantedList> lists;
    for (const std::string& name : filesOfTree(root)) {
        if (name.starts_with("tests/planted/") && name.ends_with(".txt")) {
            lists[name] = plantedIn(contentOf(root / name));
        }
    }
    return lists;
}

} // namespace

TEST(PlantedFaults, AreReadBlockByBlock) {
    const PlantedList list = plantedIn("# a comment\n[sign]\nfile: core/a/b.cpp\nfrom: x + y\nto: "
                                       "x - y\nwhat: wrong\nnoticed by: test A.B\n\n[left out]\n"
                                       "file: core/a/b.cpp\nafter: void f\nfrom: g();\nto:\nodd\n");
    ASSERT_EQ(list.faults.size(), 2U);
    EXPECT_EQ(list.faults[0].name, "sign");
    EXPECT_EQ(list.faults[0].from, "x + y");
    EXPECT_EQ(list.faults[0].to, "x - y");
    EXPECT_EQ(list.faults[0].noticedBy, "test A.B");
    EXPECT_EQ(list.faults[1].after, "void f");
    EXPECT_EQ(list.faults[1].to, "");
    EXPECT_THAT(list.strangeLines, testing::ElementsAre("odd"));
}

TEST(PlantedFaults, ArePlantedWhereTheTextStandsOnceOrAfterTheAnchor) {
    PlantedFault fault;
    fault.from = "a < b";
    fault.to = "a <= b";
    EXPECT_EQ(whyNotPlanted(fault, "if (a < b)"), "");
    EXPECT_EQ(whyNotPlanted(fault, "if (a < c)"), "'a < b' is not there");
    EXPECT_EQ(whyNotPlanted(fault, "a < b; a < b"), "'a < b' stands more than once");
    fault.after = "int second";
    EXPECT_EQ(whyNotPlanted(fault, "a < b; int second = a < b; a < b"), "");
    EXPECT_EQ(whyNotPlanted(fault, "a < b"), "'int second' is not there");
    fault.to = fault.from;
    EXPECT_EQ(whyNotPlanted(fault, "int second = a < b"), "it changes nothing");
}

TEST(PlantedFaults, OfEveryListCanBePlanted) {
    for (const auto& [list, planted] : allLists()) {
        EXPECT_THAT(planted.strangeLines, testing::IsEmpty()) << list;
        std::set<std::string> names;
        for (const PlantedFault& fault : planted.faults) {
            EXPECT_TRUE(names.insert(fault.name).second)
                << list << ": two are called " << fault.name;
            EXPECT_EQ(whyNotPlanted(fault, contentOf(root / fault.file)), "")
                << list << ": " << fault.name << " in " << fault.file;
            EXPECT_NE(fault.what, "") << list << ": " << fault.name;
            EXPECT_NE(fault.noticedBy.empty(), fault.excuse.empty())
                << list << ": " << fault.name << " needs a claim, or the reason why it is no fault";
        }
    }
}

TEST(PlantedFaults, AreAtLeast250AndLieInEveryFolderOfCoreAndApp) {
    std::map<std::string, int> counts;
    int all = 0;
    for (const auto& [list, planted] : allLists()) {
        for (const PlantedFault& fault : planted.faults) {
            if (fault.excuse.empty()) {
                ++counts[folderOf(fault.file)];
                ++all;
            }
        }
    }
    EXPECT_GE(all, 250);
    for (const std::string part : {"core", "app"}) {
        const std::string lists = contentOf(root / part / "CMakeLists.txt");
        for (const auto& [folder, uses] : layersIn(lists, "meremark_" + part + "_folder")) {
            EXPECT_GE(counts[part + "/" + folder], 3) << part << "/" << folder;
        }
    }
}

} // namespace rules
