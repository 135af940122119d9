// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody meets who hears the window instead of seeing it, or has no mouse: the tree that Qt
// hands to screen readers (AT-SPI), and the way of the Tab key.
#include "app/chart/spoken_chart.h"
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/step_head.h"
#include "app/days/step_panel.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/widgets/plain_table.h"
#include "tests/app/window/window_case.h"
#include "tests/support/desk_bowl.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QButtonGroup>
#include <QHeaderView>
#include <QTest>

#include <set>

namespace {

using window_case::Window;

/// Roles of what can be operated or read, by the names of QAccessible.
bool needsName(QAccessible::Role role) {
    static const std::set<QAccessible::Role> needing{
        QAccessible::Button,         QAccessible::CheckBox,
        QAccessible::RadioButton,    QAccessible::ComboBox,
        QAccessible::EditableText,   QAccessible::SpinBox,
        QAccessible::Slider,         QAccessible::Table,
        QAccessible::List,           QAccessible::ButtonMenu,
        QAccessible::ButtonDropDown, QAccessible::MenuItem,
        QAccessible::ProgressBar,    QAccessible::Dial};
    return needing.contains(role);
}

bool isControl(const QWidget& widget) {
    return widget.focusPolicy() != Qt::NoFocus;
}

QString whatItIs(const QWidget& widget) {
    QString path = widget.metaObject()->className();
    for (const QWidget* up = widget.parentWidget(); up != nullptr; up = up->parentWidget()) {
        path.prepend(QStringLiteral("%1 > ").arg(up->metaObject()->className()));
    }
    return path + " \"" + widget.toolTip() + "\"";
}

class Accessible : public Window {
protected:
    void SetUp() override {
        Window::SetUp();
        ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
        ASSERT_TRUE(support::layBowl(open()));
        open().deriveUpTo(water::Step::sections);
        open().planTomorrow();
        open().jobs().finishAll();
        window_->resize(1280, 800);
        window_->show();
        window_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    }
    std::array<days::StepPanel*, 3> panels() {
        return {&window_->findChild<days::survey_day::SurveyDay*>()->steps(),
                &window_->findChild<days::tomorrow::TomorrowDay*>()->steps(),
                &window_->findChild<days::looking_back::LookingBackDay*>()->steps()};
    }
    /// Does it with every step of every day open.
    void inEachStep(const std::function<void(const QString&)>& act) {
        for (int day = 0; day < 3; ++day) {
            window_->showDay(day);
            days::StepPanel& panel = *panels().at(static_cast<std::size_t>(day));
            for (int step = 0; step < panel.count(); ++step) {
                panel.openStep(step);
                open().jobs().finishAll();
                QCoreApplication::processEvents();
                act(QStringLiteral("day %1, step %2").arg(day + 1).arg(step + 1));
            }
        }
    }
    /// All interfaces below this one that can be seen.
    static void walk(QAccessibleInterface* at,
                     const std::function<void(QAccessibleInterface&)>& act) {
        if (at == nullptr || !at->isValid() || at->state().invisible) {
            return;
        }
        act(*at);
        // The cells of a table have their words; there may be a hundred thousand.
        if (at->role() == QAccessible::Table) {
            return;
        }
        for (int i = 0; i < at->childCount(); ++i) {
            walk(at->child(i), act);
        }
    }
};

TEST_F(Accessible, NoControlIsWithoutAName) {
    int met = 0;
    inEachStep([&](const QString& where) {
        walk(QAccessible::queryAccessibleInterface(window_.get()), [&](QAccessibleInterface& at) {
            const auto* widget = qobject_cast<QWidget*>(at.object());
            const bool isOne = needsName(at.role()) ||
                               (widget != nullptr && isControl(*widget) && widget != window_.get());
            if (!isOne) {
                return;
            }
            ++met;
            EXPECT_FALSE(at.text(QAccessible::Name).trimmed().isEmpty())
                << where.toStdString() << ": "
                << (widget != nullptr ? whatItIs(*widget).toStdString() : "no widget") << ", role "
                << at.role();
        });
    });
    EXPECT_GT(met, 500) << "the walk does not reach the controls";
}

TEST_F(Accessible, TheTabKeyReachesEveryControlAndIsNeverTrapped) {
    inEachStep([&](const QString& where) {
        std::set<const QWidget*> wanted;
        for (const QWidget* each : window_->findChildren<QWidget*>()) {
            if (each->isVisible() && each->isEnabled() && !each->focusProxy() &&
                (each->focusPolicy() & Qt::TabFocus) == Qt::TabFocus &&
                each->window() == window_.get()) {
                wanted.insert(each);
            }
        }
        // Of buttons of which one is chosen Tab meets that one; arrows go to the others.
        std::erase_if(wanted, [](const QWidget* each) {
            const auto* button = qobject_cast<const QAbstractButton*>(each);
            return button != nullptr && button->group() != nullptr &&
                   button->group()->exclusive() && !button->isChecked();
        });
        canvas().setFocus();
        std::set<const QWidget*> reached;
        const QWidget* first = QApplication::focusWidget();
        ASSERT_EQ(first, &canvas());
        for (std::size_t press = 0; press <= 2 * wanted.size(); ++press) {
            QWidget* before = QApplication::focusWidget();
            reached.insert(before);
            // A date is typed in parts, and Tab goes through them first.
            constexpr int mostParts = 6;
            for (int part = 0; part < mostParts && QApplication::focusWidget() == before; ++part) {
                QTest::keyClick(before, Qt::Key_Tab);
            }
            ASSERT_NE(QApplication::focusWidget(), before)
                << where.toStdString() << ": trapped in " << whatItIs(*before).toStdString();
            if (QApplication::focusWidget() == first) {
                break;
            }
        }
        EXPECT_EQ(QApplication::focusWidget(), first) << where.toStdString() << ": goes round";
        for (const QWidget* each : wanted) {
            EXPECT_TRUE(reached.contains(each))
                << where.toStdString() << ": never reached: " << whatItIs(*each).toStdString();
        }
    });
}

TEST_F(Accessible, ArrowsGoFromDayToDay) {
    button("Survey day").setFocus();
    QTest::keyClick(&button("Survey day"), Qt::Key_Right);
    EXPECT_EQ(QApplication::focusWidget(), &button("Tomorrow"));
    QTest::keyClick(&button("Tomorrow"), Qt::Key_Right);
    EXPECT_EQ(QApplication::focusWidget(), &button("Looking back"));
}

TEST_F(Accessible, TheKeysGoFromHeadToHeadAndThenIntoTheStep) {
    for (int day = 0; day < 3; ++day) {
        window_->showDay(day);
        days::StepPanel& panel = *panels().at(static_cast<std::size_t>(day));
        panel.openStep(1);
        QCoreApplication::processEvents();
        const auto heads = panel.findChildren<days::StepHead*>();
        heads[0]->setFocus();
        for (qsizetype i = 1; i < heads.size(); ++i) {
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
            EXPECT_EQ(QApplication::focusWidget(), heads[i]) << day << ' ' << i;
        }
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        QWidget* next = QApplication::focusWidget();
        EXPECT_TRUE(panel.isAncestorOf(next)) << day;
        EXPECT_EQ(qobject_cast<days::StepHead*>(next), nullptr) << day;
    }
}

TEST_F(Accessible, TheChartSaysWhatIsOnIt) {
    window_->showDay(1);
    open().jobs().finishAll();
    QCoreApplication::processEvents();
    const QString said = canvas().accessibleDescription();
    EXPECT_TRUE(said.startsWith("bowl, ")) << said.toStdString();
    EXPECT_TRUE(said.contains("Marks: 1 ")) << said.toStdString();
    EXPECT_TRUE(said.contains("Sections: ")) << said.toStdString();
    const auto* at = QAccessible::queryAccessibleInterface(&canvas());
    EXPECT_EQ(at->text(QAccessible::Description), said);
    EXPECT_FALSE(chart::spokenChart(chart::ChartContent()).isEmpty());
}

TEST_F(Accessible, EveryTableKeepsItsLastColumnAndNoLineOfAStepIsCut) {
    for (const QSize size : {QSize(1280, 800), QSize(1024, 600)}) {
        window_->resize(size);
        QCoreApplication::processEvents();
        int tables = 0;
        inEachStep([&](const QString& where) {
            for (const auto* table : window_->findChildren<widgets::PlainTable*>()) {
                if (table->isVisible() && table->rowCount() > 0) {
                    ++tables;
                    EXPECT_LE(table->horizontalHeader()->length(), table->viewport()->width())
                        << where.toStdString() << ": " << table->headingOf(0).toStdString();
                }
            }
            for (const QLabel* label : window_->findChildren<QLabel*>()) {
                if (label->isVisible() && label->wordWrap()) {
                    EXPECT_GE(label->height(), label->heightForWidth(label->width()))
                        << where.toStdString() << ": " << label->text().toStdString();
                }
            }
        });
        EXPECT_GT(tables, 8);
    }
}

} // namespace
