// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/breach.h"
#include "tests/rules/checks.h"

#include <algorithm>
#include <fstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

namespace rules {

namespace {

using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::HasSubstr;
using testing::IsEmpty;

const std::string licence = "// SPDX-License-Identifier: GPL-3.0-or-later\n";

std::string header(const std::string& folder, const std::string& includes = {}) {
    return licence + "#pragma once\n" + includes + "namespace " + folder + " {\n}\n";
}

/// A small tree that keeps every rule, in a folder of its own; each test plants one breach.
class Tree : public testing::Test {
protected:
    void SetUp() override {
        std::string pattern = (std::filesystem::temp_directory_path() / "rules-XXXXXX").string();
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        root_ = pattern;
        plant(".reuse/dep5", "Files: *\nCopyright: 2026 Somebody\nLicense: GPL-3.0-or-later\n");
        plant("LICENSE", "The words of it.\n");
        plant(
            "core/CMakeLists.txt",
            "# SPDX-License-Identifier: GPL-3.0-or-later\n"
            "meremark_core_folder(units)\nmeremark_core_folder(geo USES units FENCED PROJ::proj)\n"
            "meremark_core_folder(surface USES units geo)\n"
            "meremark_core_folder(water USES units geo surface)\n"
            "meremark_core_folder(store USES units geo surface water)\n");
        plant("app/CMakeLists.txt", "# SPDX-License-Identifier: GPL-3.0-or-later\n"
                                    "meremark_app_folder(chart USES core_water)\n"
                                    "meremark_app_folder(days USES core_water app_chart)\n");
        plant("core/units/depth.h", header("units"));
        plant("core/geo/water_frame.cpp",
              licence + "#include <proj.h>\n#include \"core/units/depth.h\"\n");
        plant("core/surface/draw_water.h", header("surface", "#include \"core/units/depth.h\"\n"));
        plant("core/water/steps/derive.cpp", licence + "#include \"core/surface/draw_water.h\"\n");
        plant("core/store/statement.cpp",
              licence + "#include <sqlite3.h>\nauto q = \"SELECT 1\";\n");
        plant("app/days/panel.cpp",
              licence +
                  "#include \"app/chart/canvas.h\"\n#include <QWidget>\n#include \"panel.moc\"\n");
    }

    void TearDown() override { std::filesystem::remove_all(root_); }

    void plant(const std::string& name, const std::string& content) const {
        std::filesystem::create_directories((root_ / name).parent_path());
        std::ofstream(root_ / name) << content;
    }

    [[nodiscard]] std::vector<Breach> breaches() const {
        return findBreaches(root_, filesOfTree(root_));
    }

    /// That exactly one breach is found: of this rule, in this file, on this line.
    void expectOnly(const std::string& rule, const std::string& file, int line,
                    const std::string& what = {}) const {
        EXPECT_THAT(
            breaches(),
            ElementsAre(AllOf(Field(&Breach::rule, rule), Field(&Breach::file, file),
                              Field(&Breach::line, line), Field(&Breach::what, HasSubstr(what)))));
    }

    std::filesystem::path root_;
};

} // namespace

/// For messages of failed expectations.
void PrintTo(const Breach& breach, std::ostream* out) {
    *out << sentence(breach);
}

TEST_F(Tree, ThatKeepsEveryRuleHasNoBreach) {
    EXPECT_THAT(breaches(), IsEmpty());
}

TEST_F(Tree, NamesAFileThatNoTermsAreKnownOf) {
    plant(".reuse/dep5", "Files: core/* app/* LICENSE .reuse/dep?\nLicense: GPL-3.0-or-later\n");
    EXPECT_THAT(breaches(), IsEmpty());
    plant("resources/pictures/hull.png", "");
    expectOnly("licence", "resources/pictures/hull.png", 0, "says nothing of it");
}

TEST_F(Tree, WithoutTermsNamesEveryFile) {
    std::filesystem::remove(root_ / ".reuse/dep5");
    EXPECT_EQ(breaches().size(), filesOfTree(root_).size());
}

TEST_F(Tree, NamesAFileThatContradictsItsTerms) {
    plant("resources/list.csv", std::string("name\n# SPDX-License-") + "Identifier: MIT\n");
    expectOnly("licence", "resources/list.csv", 0, "names MIT, and .reuse/dep5 GPL-3.0-or-later");
    plant(".reuse/dep5", "Files: *\nLicense: GPL-3.0-or-later\n\nFiles: *.csv\nLicense: MIT\n");
    expectOnly("licence", "resources/install/MIT.txt", 0, "the words of MIT are missing");
    plant("resources/install/MIT.txt", "The words of it.\n");
    EXPECT_THAT(breaches(), IsEmpty());
}

TEST_F(Tree, NamesALicenceWhoseWordsAreMissing) {
    std::filesystem::remove(root_ / "LICENSE");
    expectOnly("licence", "LICENSE", 0, "the words of GPL-3.0-or-later are missing");
}

TEST_F(Tree, NamesAnUpwardInclude) {
    plant("core/units/length.h", header("units", "#include \"core/geo/path.h\"\n"));
    expectOnly("arrow", "core/units/length.h", 3, "does not let units use geo");
}

TEST_F(Tree, NamesAnIncludeOfTheWindowInCore) {
    plant("core/geo/path.cpp", licence + "#include \"app/chart/canvas.h\"\n");
    expectOnly("arrow", "core/geo/path.cpp", 2, "core may not know the window");
}

TEST_F(Tree, NamesAFolderThatIsNotDeclared) {
    plant("core/gossip/rumour.h", header("gossip", "#include \"core/units/depth.h\"\n"));
    expectOnly("arrow", "core/gossip/rumour.h", 3, "does not name the folder gossip");
}

TEST_F(Tree, NamesAnIncludeAgainstTheArrowsOfTheRooms) {
    std::filesystem::remove(root_ / "core/water/derive.cpp");
    plant("core/CMakeLists.txt", "# SPDX-License-Identifier: GPL-3.0-or-later\n"
                                 "meremark_core_folder(units)\n"
                                 "meremark_core_folder(geo USES units FENCED PROJ::proj)\n"
                                 "meremark_core_folder(surface USES units geo)\n"
                                 "meremark_core_folder(water USES units geo surface)\n"
                                 "meremark_core_room(water/document)\n"
                                 "meremark_core_room(water/steps USES water/document)\n"
                                 "meremark_core_folder(store USES units geo surface water)\n");
    plant("core/water/steps/derive.h",
          header("water", "#include \"core/water/document/water.h\"\n"));
    plant("core/store/keep.cpp", licence + "#include \"core/water/document/water.h\"\n");
    EXPECT_THAT(breaches(), IsEmpty());
    plant("core/water/document/water.h",
          header("water", "#include \"core/water/steps/derive.h\"\n"));
    expectOnly("arrow", "core/water/document/water.h", 3,
               "does not let water/document use water/steps");
    plant("core/water/document/water.h", header("water"));
    plant("core/water/loose.h", header("water"));
    expectOnly("arrow", "core/water/loose.h", 0, "lies in none");
}

TEST_F(Tree, NamesAnIncludeThatDoesNotStartAtTheRoot) {
    plant("core/units/length.h", header("units", "#include \"depth.h\"\n"));
    expectOnly("arrow", "core/units/length.h", 3, "include from the root");
}

TEST_F(Tree, NamesAnUndeclaredIncludeBetweenFoldersOfTheWindow) {
    plant("app/chart/canvas.cpp", licence + "#include \"app/days/panel.h\"\n");
    expectOnly("arrow", "app/chart/canvas.cpp", 2, "does not let chart use app_days");
}

TEST_F(Tree, NamesAJobThatIsCalledFromAnotherFolder) {
    plant("core/store/keep.cpp", licence + "#include \"core/surface/draw_water.h\"\n");
    expectOnly("verb", "core/store/keep.cpp", 2);
}

TEST_F(Tree, NamesAJobOfCoreThatTheWindowCallsItself) {
    plant("app/chart/canvas.cpp", licence + "#include \"core/surface/draw_water.h\"\n");
    expectOnly("verb", "app/chart/canvas.cpp", 2);
}

TEST_F(Tree, LetsAFolderCallItsOwnJobs) {
    plant("core/surface/trust.cpp", licence + "#include \"core/surface/draw_water.h\"\n");
    EXPECT_THAT(breaches(), IsEmpty());
}

TEST_F(Tree, NamesQtInCore) {
    plant("core/units/depth.cpp", licence + "#include <QString>\n");
    expectOnly("fence", "core/units/depth.cpp", 2, "Qt belongs to app");
}

TEST_F(Tree, NamesGdalOutsideItsFolder) {
    for (const char* include : {"gdal_priv.h", "ogrsf_frmts.h", "cpl_conv.h"}) {
        plant("core/surface/trust.cpp", licence + "#include <" + include + ">\n");
        expectOnly("fence", "core/surface/trust.cpp", 2, "GDAL belongs to core/gdal");
    }
}

TEST_F(Tree, NamesProjOutsideTheWaterFrame) {
    plant("core/geo/path.cpp", licence + "#include <geodesic.h>\n");
    expectOnly("fence", "core/geo/path.cpp", 2, "PROJ belongs to");
}

TEST_F(Tree, NamesSqlOutsideTheStore) {
    for (const char* sql :
         {"SELECT depth FROM soundings", "INSERT INTO marks VALUES (1)", "CREATE TABLE stays (id)",
          "create table stays (id)", "PRAGMA user_version"}) {
        plant("core/water/document/water.cpp", licence + "\nauto q = \"" + sql + "\";\n");
        expectOnly("fence", "core/water/document/water.cpp", 3, "SQL belongs to core/store");
    }
    plant("core/water/document/water.cpp", licence + "#include <sqlite3.h>\n");
    expectOnly("fence", "core/water/document/water.cpp", 2, "SQLite belongs to core/store");
}

TEST_F(Tree, TakesPlainWordsAndCommentsForNoSql) {
    plant("core/water/document/water.cpp",
          licence + "// SELECT nothing\nauto a = \"Select a mark from the "
                    "list\", b = \"update the set\";\n");
    EXPECT_THAT(breaches(), IsEmpty());
}

TEST_F(Tree, NamesHeavyHeadersInHeaders) {
    plant("core/units/area.h", header("units", "#include <fmt/format.h>\n"));
    expectOnly("fence", "core/units/area.h", 3, "heavy");
}

TEST_F(Tree, NamesHeadersFrom200AndSourcesFrom400Lines) {
    const std::string start = header("units");
    const auto used = std::ranges::count(start, '\n');
    plant("core/units/area.h", start + std::string(static_cast<std::size_t>(199 - used), '\n'));
    plant("core/units/area.cpp", licence + std::string(398, '\n'));
    EXPECT_THAT(breaches(), IsEmpty());
    plant("core/units/area.h", start + std::string(static_cast<std::size_t>(200 - used), '\n'));
    expectOnly("length", "core/units/area.h", 0, "200 lines");
    plant("core/units/area.h", start);
    plant("core/units/area.cpp", licence + std::string(399, '\n'));
    expectOnly("length", "core/units/area.cpp", 0, "400 lines");
}

TEST_F(Tree, NamesAMissingLicenceLine) {
    plant("core/units/area.cpp", "#include \"core/units/depth.h\"\n");
    expectOnly("licence", "core/units/area.cpp", 1);
}

TEST_F(Tree, NamesWhatIsLeftOpen) {
    plant("core/units/area.cpp", licence + "int a; // TO"
                                           "DO later\n");
    expectOnly("left open", "core/units/area.cpp", 2);
    plant("core/units/area.cpp", licence + "int a;\n// stu"
                                           "bbed for now\n");
    expectOnly("left open", "core/units/area.cpp", 3);
    plant("core/units/area.cpp", licence + "auto a = \"/ho"
                                           "me/ann/lake.csv\";\n");
    expectOnly("left open", "core/units/area.cpp", 2);
}

TEST_F(Tree, NamesAStrangerAtTheTopLevel) {
    plant("notes.txt", "later");
    expectOnly("top level", "notes.txt", 0);
}

TEST_F(Tree, NamesAHeaderInTheWrongNamespaceWithoutGuardOrWithAnOddName) {
    plant("core/units/area.h", header("geo"));
    expectOnly("name", "core/units/area.h", 0, "namespace units");
    plant("core/units/area.h", licence + "namespace units {\n}\n");
    expectOnly("name", "core/units/area.h", 0, "#pragma once");
    plant("core/units/area.h", header("units"));
    plant("core/units/WideArea.cpp", licence);
    expectOnly("name", "core/units/WideArea.cpp", 0, "small letters");
}

TEST_F(Tree, NamesAnOptionOrARawKeyWhereAPersonReads) {
    plant("app/days/panel.cpp", licence + "auto a = tr(\"say --unit ft\");\n");
    expectOnly("said", "app/days/panel.cpp", 2);
    plant("app/days/panel.cpp",
          licence + "auto a = 1;\nauto b = tr(\"set aside: bad_checksum\");\n");
    expectOnly("said", "app/days/panel.cpp", 3);
    plant("app/days/panel.cpp",
          licence + "auto a = name(\"bad_checksum\"); auto b = tr(\"20 -- that is a lot\");\n");
    EXPECT_THAT(findBreaches(root_, filesOfTree(root_)), IsEmpty());
}

TEST(ThisTree, KeepsEveryRule) {
    const std::filesystem::path root = MEREMARK_SOURCE_DIR;
    const std::vector<std::string> files = filesOfTree(root);
    ASSERT_THAT(files, Contains("core/units/depth.h"));
    ASSERT_THAT(files, Contains("core/CMakeLists.txt"));
    for (const Breach& breach : findBreaches(root, files)) {
        ADD_FAILURE() << sentence(breach);
    }
}

} // namespace rules
