// SPDX-License-Identifier: GPL-3.0-or-later
// The three days again and again at one desk: draw, edit, undo, plan, log, print. What the program
// holds of memory afterwards is what it held before. MEREMARK_SOAK_ROUNDS says how often (a long
// soak: 100).
#include "app/edits/add_lead_line.h"
#include "app/edits/add_stays.h"
#include "app/edits/set_plan.h"
#include "app/paper/day_sheet.h"
#include "tests/app/window/window_case.h"
#include "tests/support/desk_bowl.h"

#include <QUndoStack>

#include <functional>
#include <iostream>
#include <string>
#include <vector>

#include <malloc.h>

namespace {

class Soak : public window_case::Window {
protected:
    void SetUp() override {
        Window::SetUp();
        ASSERT_TRUE(open().create(folder_.filePath(QStringLiteral("bowl.gpkg")), "bowl"));
        ASSERT_TRUE(support::layBowl(open()));
    }
    /// All three days; what is edited is taken back, so that the water is what it was.
    void walkThreeDays() {
        soundings::LeadLineSounding lead;
        lead.place = {3.1005, 55.2003};
        lead.depth = units::Depth::metres(6.5);
        edits::addLeadLine(open(), {lead});
        ASSERT_TRUE(support::derive(open()));
        open().undoStack().undo();
        ASSERT_TRUE(support::derive(open()));

        edits::setPlan(open(), QStringLiteral("Set wind"), [](marks::Plan& plan) {
            plan.day.wind.from = units::Bearing::degrees(250.0);
            plan.day.wind.speed = units::Speed::metresPerSecond(4.0);
            plan.count = 3;
        });
        open().planTomorrow();
        open().jobs().finishAll();
        ASSERT_TRUE(open().isPlanCurrent());
        QCoreApplication::processEvents();
        const auto printed =
            paper::saveDaySheet(folder_.filePath(QStringLiteral("day.pdf")).toStdString(),
                                canvas().content(), paper::SheetForm::withPictures);
        ASSERT_TRUE(printed.has_value()) << printed.error().sentence();
        open().undoStack().undo();

        logbook::Stay stay;
        stay.place = lead.place;
        stay.start = units::Moment(std::chrono::hours(498'000));
        stay.end = stay.start + std::chrono::hours(2);
        stay.rods = 2;
        edits::addStays(open(), QStringLiteral("Add stay"), {stay});
        open().undoStack().undo();
        ASSERT_TRUE(open().finishKeeping());
        open().jobs().finishAll();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    /// What is asked of the system and not given back, in bytes.
    static double held() {
        const struct mallinfo2 info = mallinfo2();
        return static_cast<double>(info.uordblks + info.hblkhd);
    }
    /// By what share it has grown from the end of the first rounds to the end of the last.
    double growth(
        int rounds, const std::function<void()>& also = [] {}) {
        constexpr int untilAllIsLaid = 3; // fonts, caches, the first of everything
        double laid = 0.0;
        for (int round = 1; round <= untilAllIsLaid + rounds && !HasFatalFailure(); ++round) {
            walkThreeDays();
            also();
            laid = round == untilAllIsLaid ? held() : laid;
        }
        std::cout << "             " << laid / 1e6 << " MB after " << untilAllIsLaid << " rounds, "
                  << held() / 1e6 << " MB after " << rounds << " more\n";
        return held() / laid - 1.0;
    }
    static int rounds(int usually) {
        const int asked = qEnvironmentVariableIntValue("MEREMARK_SOAK_ROUNDS");
        return asked > 0 ? asked : usually;
    }
};

#if !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__) // they count otherwise
TEST_F(Soak, OfThreeDaysAgainAndAgainTakesNoMoreMemory) {
    EXPECT_LT(growth(rounds(5)), 0.02);
}

TEST_F(Soak, WouldShowWhatIsNeverGivenBack) {
    std::vector<std::string> kept;
    const double each = 0.01 * held();
    EXPECT_GT(growth(5, [&] { kept.emplace_back(static_cast<std::size_t>(each), 'x'); }), 0.02);
}
#endif

} // namespace
