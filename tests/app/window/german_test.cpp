// SPDX-License-Identifier: GPL-3.0-or-later
// The desk in German: longer words fit, and what is typed as Germans do is understood.
#include "app/days/step_panel.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/widgets/amount_field.h"
#include "app/wording/tongue.h"
#include "tests/app/window/window_case.h"
#include "tests/support/desk_bowl.h"

#include <QAbstractButton>
#include <QAction>
#include <QFile>
#include <QLabel>
#include <QScrollArea>
#include <QTest>

namespace {

using wording::Tongue;

class GermanDesk : public window_case::Window {
protected:
    void SetUp() override {
        Tongue::speak("de");
        Window::SetUp();
        ASSERT_EQ(Tongue::spoken(), "de");
        ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "Kleiner See"));
        ASSERT_TRUE(support::layBowl(open()));
        open().planTomorrow();
        open().jobs().finishAll();
        QCoreApplication::processEvents();
        window_->show();
    }
    void TearDown() override {
        Window::TearDown();
        Tongue::speak("en");
    }

    /// What of this part of the window is narrower than it has to be.
    [[nodiscard]] static QStringList cutIn(const QWidget& part) {
        QStringList cut;
        for (const QWidget* each : part.findChildren<QWidget*>()) {
            const auto* button = qobject_cast<const QAbstractButton*>(each);
            const bool isCut = button != nullptr && button->isVisible() &&
                               !button->text().isEmpty() &&
                               button->width() < button->minimumSizeHint().width();
            if (isCut) {
                cut += button->text();
            }
        }
        return cut;
    }

    /// What makes the body of the open step wider than the room it has; empty where it fits.
    [[nodiscard]] static QStringList tooWideIn(const days::StepPanel& panel) {
        QStringList wide;
        const auto* scroll = panel.findChild<QScrollArea*>();
        const int room = scroll->viewport()->width();
        if (scroll->widget()->width() <= room) {
            return wide;
        }
        for (const QWidget* each : scroll->widget()->findChildren<QWidget*>()) {
            if (each->isVisible() &&
                std::max(each->minimumSizeHint().width(), each->minimumWidth()) > room / 2) {
                wide += QStringLiteral("%1 %2 '%3'")
                            .arg(each->metaObject()->className())
                            .arg(each->minimumSizeHint().width())
                            .arg(each->accessibleName().left(60));
            }
        }
        wide += QStringLiteral("%1 in %2").arg(scroll->widget()->width()).arg(room);
        return wide;
    }
};

} // namespace

TEST_F(GermanDesk, FitsWithEveryStepOpenOnASmallScreenAndALargerOne) {
    for (const QSize size : {QSize(1024, 600), QSize(1280, 800)}) {
        window_->resize(size);
        for (int day = 0; day < 3; ++day) {
            window_->showDay(day);
            QCoreApplication::processEvents();
            for (days::StepPanel* panel : window_->findChildren<days::StepPanel*>()) {
                for (int step = 0; panel->isVisible() && step < panel->count(); ++step) {
                    panel->openStep(step);
                    QCoreApplication::processEvents();
                    EXPECT_EQ(window_->size(), size);
                    EXPECT_EQ(tooWideIn(*panel).join("; ").toStdString(), "")
                        << day << ' ' << step << ' ' << size.width();
                    EXPECT_EQ(cutIn(*panel).join("; ").toStdString(), "") << day << ' ' << step;
                }
            }
        }
        EXPECT_EQ(cutIn(*window_).join("; ").toStdString(), "");
    }
}

TEST_F(GermanDesk, TakesACommaAndShowsOne) {
    auto& tomorrow = *window_->findChild<days::tomorrow::TomorrowDay*>();
    window_->showDay(1);
    tomorrow.steps().openStep(1);
    int found = 0;
    for (auto* field : tomorrow.findChildren<widgets::AmountField*>()) {
        if (field->accessibleName() != "Mehrtiefe") {
            continue;
        }
        ++found;
        for (const char* typed : {"0,35 m", "0.35"}) {
            field->setFocus();
            field->selectAll();
            QTest::keyClicks(field, typed);
            QTest::keyClick(field, Qt::Key_Return);
            EXPECT_FALSE(field->isWrong()) << typed;
            EXPECT_EQ(field->text(), "0,35 m") << typed;
            EXPECT_NEAR(open().water()->plan.tackle.overDepth.inMetres(), 0.35, 1e-9) << typed;
        }
    }
    EXPECT_EQ(found, 1);
}

TEST_F(GermanDesk, LetsTheLanguageBeChosenForTheNextStart) {
    QStringList languages;
    for (QAction* action : window_->findChildren<QAction*>()) {
        if (action->text() == "English") {
            action->trigger();
            EXPECT_EQ(preferences::Preferences::language(), "en");
        }
        if (action->text() == "Deutsch") {
            EXPECT_FALSE(action->isChecked()) << "that of the machine is";
            action->trigger();
        }
    }
    EXPECT_EQ(preferences::Preferences::language(), "de");
    EXPECT_EQ(Tongue::spoken(), "de") << "the window stays as it is";
    preferences::Preferences::setLanguage({});
}

TEST_F(GermanDesk, HasItsOwnPageOfKeysWithEveryPart) {
    const auto headsOf = [](const QString& name) {
        QFile file(name);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
        QStringList heads;
        for (const QString& line : QString::fromUtf8(file.readAll()).split('\n')) {
            if (!line.isEmpty() && !line.startsWith(' ')) {
                heads += line;
            }
        }
        return heads;
    };
    const QStringList german = headsOf(":/desk/keys_de.txt");
    EXPECT_EQ(german.size(), headsOf(":/desk/keys.txt").size());
    EXPECT_EQ(german.front(), "Überall");
}
