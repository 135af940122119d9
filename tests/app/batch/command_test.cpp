// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/command.h"

#include "app/batch/exit_code.h"
#include "app/batch/report.h"
#include "core/gdal/version.h"
#include "core/geo/water_frame.h"
#include "core/store/water_store.h"
#include "tests/app/batch/batch_call.h"
#include "tests/support/scratch_folder.h"

#include <QtGlobal>

#include <cmath>
#include <limits>
#include <set>

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::expectRefused;

TEST(ExitCode, IsThatOfTheContract) {
    EXPECT_EQ(batch::exitCodeOf(base::ErrorKind::wrongUse), 2);
    EXPECT_EQ(batch::exitCodeOf(base::ErrorKind::unusableInput), 3);
    EXPECT_EQ(batch::exitCodeOf(base::ErrorKind::unwritableOutput), 4);
    EXPECT_EQ(batch::exitCodeOf(base::ErrorKind::damagedWater), 5);
    EXPECT_EQ(batch::exitCodeOf(base::ErrorKind::cancelled), 6);
}

TEST(Command, VersionNamesWhatIsInUse) {
    const Call version = call({"--version"});
    EXPECT_EQ(version.exitCode, 0);
    EXPECT_EQ(version.error, "");
    EXPECT_TRUE(version.out.starts_with("meremark-batch ")) << version.out;
    for (const std::string& line :
         {"\nQt " + std::string(qVersion()) + "\n", "\nGDAL " + gdal::gdalVersion() + "\n",
          "\nPROJ " + geo::projVersion() + "\n", "\nSQLite " + store::sqliteVersion() + "\n"}) {
        EXPECT_NE(version.out.find(line), std::string::npos) << line << version.out;
    }
}

TEST(Command, EveryVerbExplainsItselfWithAnExample) {
    for (const std::string verb :
         {"sketch", "marks", "log", "review", "compare", "check", "give"}) {
        const Call help = call({verb, "--help"});
        EXPECT_EQ(help.exitCode, 0) << verb;
        EXPECT_EQ(help.error, "") << verb;
        EXPECT_NE(help.out.find("Example: meremark-batch " + verb + " "), std::string::npos)
            << help.out;
        EXPECT_NE(call({"--help"}).out.find("\n  " + verb + " "), std::string::npos) << verb;
    }
}

TEST(Command, WithoutAVerbItKnowsIsToldWhereToLook) {
    expectRefused(call({}), 2, {"subcommand", "--help"});
    expectRefused(call({"fish"}), 2, {"--help"});
    expectRefused(call({"check", "a.gpkg", "--deep"}), 2, {"--deep", "--help"});
}

/// The one line on standard error that a script reads.
nlohmann::json toldBy(const Call& refused) {
    EXPECT_EQ(refused.out, "");
    EXPECT_EQ(std::ranges::count(refused.error, '\n'), 1) << refused.error;
    const nlohmann::json told = nlohmann::json::parse(refused.error);
    EXPECT_EQ(told["exit_code"], refused.exitCode);
    EXPECT_FALSE(told["what"].get<std::string>().empty());
    EXPECT_FALSE(told["what_to_do"].get<std::string>().empty());
    return told;
}

TEST(JsonErrors, TellAScriptWhereWhatAndWhatToDo) {
    const support::ScratchFolder folder;
    const std::string text = folder.file("a \"text\".gpkg", "lon,lat\n").string();
    const nlohmann::json told = toldBy(call({"check", text, "--json"}));
    EXPECT_EQ(told["error"], "unusable_input");
    EXPECT_EQ(told["where"], text);
    EXPECT_EQ(told["exit_code"], 3);
    const Call plain = call({"check", text});
    EXPECT_EQ(plain.error, "meremark-batch: " + told["where"].get<std::string>() + ": " +
                               told["what"].get<std::string>() + "; " +
                               told["what_to_do"].get<std::string>() + "\n");
    EXPECT_EQ(toldBy(call({"--json", "check", text})), told) << "before the verb or after it";
}

TEST(JsonErrors, TellOfWrongUseToo) {
    for (const std::vector<std::string>& words : {std::vector<std::string>{"--json"},
                                                  {"--json", "draw"},
                                                  {"marks", "--json"},
                                                  {"check", "a.gpkg", "--deep", "--json"},
                                                  {"check", "a.gpkg", "--json", "--rescue"}}) {
        const nlohmann::json told = toldBy(call(words));
        EXPECT_EQ(told["error"], "wrong_use");
        EXPECT_EQ(told["exit_code"], 2);
    }
}

TEST(JsonErrors, ParseWhateverAFileIsCalled) {
    const nlohmann::json told = toldBy(call({"check", "\xff\x1b[2J\xE2\x80\xAE.gpkg", "--json"}));
    const auto where = told["where"].get<std::string>();
    EXPECT_EQ(where.find('\x1b'), std::string::npos);
    EXPECT_EQ(where.find("\xE2\x80\xAE"), std::string::npos) << "nothing turns the line round";
}

TEST(JsonErrors, NameEveryKind) {
    using base::ErrorKind;
    std::set<std::string_view> keys;
    for (const ErrorKind kind :
         {ErrorKind::wrongUse, ErrorKind::unusableInput, ErrorKind::unwritableOutput,
          ErrorKind::damagedWater, ErrorKind::waterInUse, ErrorKind::waterChanged,
          ErrorKind::cancelled}) {
        keys.insert(batch::keyOf(kind));
    }
    EXPECT_EQ(keys.size(), 7U);
    EXPECT_EQ(batch::keyOf(ErrorKind::damagedWater), "damaged_water");
    EXPECT_EQ(batch::keyOf(ErrorKind::waterInUse), "water_in_use");
}

TEST(Report, NumbersAreRoundedHalfAwayFromZero) {
    EXPECT_EQ(batch::rounded(1.23456, 3), nlohmann::ordered_json(1.235));
    EXPECT_EQ(batch::rounded(-1.23456, 2), nlohmann::ordered_json(-1.23));
    EXPECT_EQ(batch::rounded(1234.5, 0), nlohmann::ordered_json(1235.0));
    EXPECT_TRUE(batch::rounded(NAN, 2).is_null());
    EXPECT_TRUE(batch::rounded(std::numeric_limits<double>::infinity(), 2).is_null());
}

TEST(Report, GoesToItsFileOrToStandardOutput) {
    const support::ScratchFolder folder;
    const nlohmann::ordered_json report{{"b", 1}, {"a", "\xff"}};
    const std::string text = "{\n  \"b\": 1,\n  \"a\": \"\xEF\xBF\xBD\"\n}\n";
    ASSERT_TRUE(batch::writeReport(folder.path() / "r.json", report).has_value());
    EXPECT_EQ(support::ScratchFolder::textOf(folder.path() / "r.json"), text);
    for (const char* path : {"", "-"}) {
        testing::internal::CaptureStdout();
        const auto written = batch::writeReport(path, report);
        EXPECT_EQ(testing::internal::GetCapturedStdout(), text);
        EXPECT_TRUE(written.has_value());
    }
    const auto refused = batch::writeReport(folder.path() / "no" / "r.json", report);
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().kind, base::ErrorKind::unwritableOutput);
}

} // namespace
