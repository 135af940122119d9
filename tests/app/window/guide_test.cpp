// SPDX-License-Identifier: GPL-3.0-or-later
// The user's guide: it says something of every step, leads nowhere but to itself, and comes up
// where somebody needs it.
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/step_panel.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/window/guide_text.h"
#include "app/window/guide_window.h"
#include "app/wording/tongue.h"
#include "tests/app/window/window_case.h"
#include "tests/support/desk_bowl.h"

#include <QAbstractTextDocumentLayout>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTest>
#include <QTextBlock>
#include <QTextTable>
#include <QTimer>

#include <set>

namespace {

using window::GuidePage;
using window::GuideWindow;
using wording::Tongue;

struct DayOfGuide {
    const char* chapter;
    days::StepPanel* steps;
};

/// What a chapter's headings are called by links.
QStringList anchorsIn(const QString& chapter) {
    QStringList anchors;
    QTextDocument text;
    text.setMarkdown(window::guideText(chapter));
    for (QTextBlock block = text.begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() > 0) {
            anchors += window::anchorOf(block.text());
        }
    }
    return anchors;
}

QStringList linksIn(const QString& chapter) {
    QStringList links;
    QTextDocument text;
    text.setMarkdown(window::guideText(chapter));
    for (QTextBlock block = text.begin(); block.isValid(); block = block.next()) {
        for (auto each = block.begin(); !each.atEnd(); ++each) {
            if (const QString href = each.fragment().charFormat().anchorHref(); !href.isEmpty()) {
                links += href;
            }
        }
    }
    return links;
}

/// The guide beside a desk that speaks English or German.
class Guide : public window_case::Window, public testing::WithParamInterface<const char*> {
protected:
    void SetUp() override {
        Tongue::speak(GetParam());
        Window::SetUp();
        ASSERT_EQ(Tongue::spoken(), GetParam());
        ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
        ASSERT_TRUE(support::layBowl(open()));
        open().jobs().finishAll();
        window_->resize(1280, 800);
        window_->show();
        QCoreApplication::processEvents();
    }
    void TearDown() override {
        Window::TearDown();
        Tongue::speak("en");
    }

    std::array<DayOfGuide, 3> daysOfGuide() {
        return {
            DayOfGuide{"survey-day", &window_->findChild<days::survey_day::SurveyDay*>()->steps()},
            DayOfGuide{"tomorrow", &window_->findChild<days::tomorrow::TomorrowDay*>()->steps()},
            DayOfGuide{"looking-back",
                       &window_->findChild<days::looking_back::LookingBackDay*>()->steps()}};
    }
    /// The act of the menu with this key.
    void trigger(const QString& key) {
        for (QAction* each : window_->actions()) {
            if (each->shortcut() == QKeySequence(key)) {
                return each->trigger();
            }
        }
        ADD_FAILURE() << "nothing on " << key.toStdString();
    }
    GuideWindow& guide() { return *window_->findChild<GuideWindow*>(); }
    GuidePage& page() { return *guide().findChild<GuidePage*>(); }
    /// The heading at the upper edge of the page, or the last one above it.
    QString headingInSight() {
        QString heading;
        const int top = page().verticalScrollBar()->value();
        for (QTextBlock block = page().document()->begin(); block.isValid(); block = block.next()) {
            const QRectF box = page().document()->documentLayout()->blockBoundingRect(block);
            if (box.top() > top + 30.0) {
                break;
            }
            if (block.blockFormat().headingLevel() > 0) {
                heading = block.text();
            }
        }
        return heading;
    }
    void finds(const QString& words) {
        auto& field = *guide().findChild<QLineEdit*>();
        field.setText(words);
        QTest::keyClick(&field, Qt::Key_Return);
    }
};

INSTANTIATE_TEST_SUITE_P(Languages, Guide, testing::Values("en", "de"),
                         [](const auto& tongue) { return std::string(tongue.param); });

} // namespace

TEST_P(Guide, HasASectionForEveryStepOfEveryDay) {
    for (const DayOfGuide& day : daysOfGuide()) {
        const QStringList anchors = anchorsIn(day.chapter);
        ASSERT_GT(day.steps->count(), 5);
        for (int step = 0; step < day.steps->count(); ++step) {
            const QString title = day.steps->titleOf(step);
            EXPECT_EQ(anchors.count(window::anchorOf(title)), 1)
                << day.chapter << ": " << title.toStdString();
        }
    }
}

TEST_P(Guide, ShowsAPictureOfEveryStepThatIsOfTheLanguageThatIsSpoken) {
    std::set<QByteArray> seen;
    for (const DayOfGuide& day : daysOfGuide()) {
        action(GetParam() == std::string("en") ? "Guide" : "Handbuch").trigger();
        guide().openAt(day.chapter);
        const QString text = window::guideText(day.chapter);
        for (int step = 0; step < day.steps->count(); ++step) {
            const QString name =
                QStringLiteral("pictures/%1-%2.png").arg(day.chapter).arg(step + 1);
            const QString heading = "## " + day.steps->titleOf(step) + "\n";
            ASSERT_TRUE(text.contains(heading)) << heading.toStdString();
            EXPECT_TRUE(text.section(heading, 1).section("\n## ", 0, 0).contains('(' + name + ')'))
                << name.toStdString();
            const QImage picture = window::guidePicture(name);
            ASSERT_FALSE(picture.isNull()) << name.toStdString();
            EXPECT_LT(picture.width(), 480) << "wider than a page";
            EXPECT_TRUE(seen.insert(QByteArray::fromRawData(
                                        reinterpret_cast<const char*>(picture.constBits()),
                                        picture.sizeInBytes())
                                        .toBase64())
                            .second)
                << name.toStdString() << " is of another step";
            const QVariant shown = page().document()->resource(
                QTextDocument::ImageResource, page().source().resolved(QUrl(name)));
            EXPECT_EQ(shown.value<QImage>(), picture) << name.toStdString();
        }
    }
    const QImage english(":/guide/pictures/tomorrow-1.png");
    EXPECT_EQ(window::guidePicture("pictures/tomorrow-1.png") == english,
              GetParam() == std::string("en"));
    EXPECT_TRUE(window::guidePicture("pictures/none.png").isNull());
}

TEST_P(Guide, ShowsNoPictureFromElsewhere) {
    action(GetParam() == std::string("en") ? "Guide" : "Handbuch").trigger();
    QImage(8, 8, QImage::Format_RGB32).save(folder_.filePath("tomorrow-1.png"));
    for (const QUrl& url : {QUrl::fromLocalFile(folder_.filePath("tomorrow-1.png")),
                            QUrl("guide:/elsewhere/none.png"), QUrl("guide:/pictures/../x.png")}) {
        const QVariant shown = page().document()->resource(QTextDocument::ImageResource, url);
        EXPECT_EQ(shown.value<QImage>().size(), QSize(1, 1)) << url.toString().toStdString();
    }
}

TEST_P(Guide, EveryChapterIsThereInTheLanguageThatIsSpoken) {
    for (const QString& chapter : window::guideChapters()) {
        const QString text = window::guideText(chapter);
        EXPECT_GT(text.size(), 800) << chapter.toStdString();
        EXPECT_TRUE(text.startsWith("# ")) << chapter.toStdString();
        const QString own = QStringLiteral(":/guide/%1/%2.md").arg(Tongue::spoken(), chapter);
        EXPECT_EQ(QFile::exists(own), Tongue::spoken() != "en" && chapter != "keys")
            << own.toStdString();
    }
    EXPECT_TRUE(window::guideText("no such chapter").isEmpty());
}

TEST_P(Guide, EveryLinkLeadsSomewhereInTheGuide) {
    int followed = 0;
    for (const QString& chapter : window::guideChapters()) {
        const QStringList links = linksIn(chapter);
        for (const QString& link : links) {
            const QUrl url = QUrl("guide:/" + chapter + ".md").resolved(QUrl(link));
            const QString file = url.fileName();
            ASSERT_TRUE(file.endsWith(".md")) << link.toStdString();
            const QString to = file.chopped(3);
            EXPECT_TRUE(window::guideChapters().contains(to)) << link.toStdString();
            const QString anchor = url.fragment(QUrl::FullyDecoded);
            EXPECT_TRUE(anchor.isEmpty() || anchorsIn(to).contains(anchor))
                << chapter.toStdString() << ": " << link.toStdString();
            ++followed;
        }
    }
    EXPECT_GE(followed, 25);
}

TEST_P(Guide, F1OpensItAtTheStepThatIsOpen) {
    const auto days = daysOfGuide();
    for (int day = 0; day < 3; ++day) {
        window_->showDay(day);
        const DayOfGuide& there = days.at(static_cast<std::size_t>(day));
        for (int step = 0; step < there.steps->count(); ++step) {
            there.steps->openStep(step);
            trigger("F1");
            ASSERT_TRUE(guide().isVisible());
            EXPECT_EQ(page().chapter(), there.chapter);
            const bool isAtEnd =
                page().verticalScrollBar()->value() == page().verticalScrollBar()->maximum();
            EXPECT_TRUE(isAtEnd || headingInSight() == there.steps->titleOf(step))
                << headingInSight().toStdString() << " and not "
                << there.steps->titleOf(step).toStdString();
        }
        EXPECT_GT(page().verticalScrollBar()->value(), 0);
    }
}

TEST_P(Guide, LinksAreFollowedAndLedBack) {
    trigger("F1");
    QPushButton* back = nullptr;
    for (QPushButton* each : guide().findChildren<QPushButton*>()) {
        back = each->text() == Tongue::tr("Back") ? each : back;
    }
    ASSERT_NE(back, nullptr);
    page().showChapter("start");
    const QString title = window::guideTitle("start");
    page().setSource(QUrl("guide:/cautions.md"));
    EXPECT_EQ(page().chapter(), "cautions");
    auto& chapters = *guide().findChild<QListWidget*>();
    EXPECT_EQ(chapters.currentItem()->text(), window::guideTitle("cautions"));
    ASSERT_TRUE(back->isEnabled());
    back->click();
    EXPECT_EQ(page().chapter(), "start");
    EXPECT_EQ(chapters.currentItem()->text(), title);
    EXPECT_EQ(page().document()->begin().text(), title);
    chapters.setCurrentRow(chapters.count() - 1);
    EXPECT_EQ(page().chapter(), "keys");
}

TEST_P(Guide, OpensNothingButItself) {
    trigger("F1");
    page().showChapter("start");
    for (const char* address : {"https://example.org/a.md", "file:///etc/passwd",
                                "file:///tmp/start.md", "guide:/no.md"}) {
        page().setSource(QUrl(address));
        EXPECT_EQ(page().chapter(), "start") << address;
        EXPECT_EQ(page().document()->begin().text(), window::guideTitle("start"));
        bool isSaid = false;
        for (const QLabel* each : guide().findChildren<QLabel*>()) {
            isSaid = isSaid || each->text().contains(address);
        }
        EXPECT_TRUE(isSaid) << address;
    }
}

TEST_P(Guide, FindsWordsInThisChapterAndInTheOthers) {
    trigger("F1");
    page().showChapter("start");
    finds("Hutchinson");
    EXPECT_EQ(page().chapter(), "how-it-draws");
    EXPECT_EQ(page().textCursor().selectedText(), "Hutchinson");
    finds("Marczak");
    EXPECT_EQ(page().chapter(), "how-it-draws") << "it stands above, in the same chapter";
    EXPECT_EQ(page().textCursor().selectedText(), "Marczak");
    finds("qwxyz");
    EXPECT_EQ(page().chapter(), "how-it-draws");
    bool isSaid = false;
    for (const QLabel* each : guide().findChildren<QLabel*>()) {
        isSaid = isSaid || each->text().contains("qwxyz");
    }
    EXPECT_TRUE(isSaid);
}

TEST_P(Guide, IsPrintedBlackFromEveryTheme) {
    window::applyStyle(*qApp, preferences::Theme::dark);
    trigger("F1");
    page().showChapter("cautions");
    const QString path = folder_.filePath("chapter.pdf");
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(path);
    window::printChapter(*page().document(), printer);
    EXPECT_GT(QFile(path).size(), 10000);
    bool wasThere = false;
    QTimer asking;
    QObject::connect(&asking, &QTimer::timeout, [&] {
        if (auto* preview = qobject_cast<QPrintPreviewDialog*>(QApplication::activeModalWidget())) {
            asking.stop();
            wasThere = true;
            preview->reject();
        }
    });
    asking.start(0);
    for (QPushButton* each : guide().findChildren<QPushButton*>()) {
        if (each->text() == Tongue::tr("Print…")) {
            each->click();
        }
    }
    EXPECT_TRUE(wasThere);
}

TEST_P(Guide, LinksHaveTheInkOfTheThemeAlsoWhenItChanges) {
    trigger("F1");
    page().showChapter("start");
    for (const preferences::Theme theme :
         {preferences::Theme::dark, preferences::Theme::highContrast, preferences::Theme::light}) {
        window::applyStyle(*qApp, theme);
        QCoreApplication::processEvents();
        const QColor ink = QApplication::palette().color(QPalette::Text);
        int links = 0;
        for (QTextBlock block = page().document()->begin(); block.isValid(); block = block.next()) {
            for (auto each = block.begin(); !each.atEnd(); ++each) {
                const QTextCharFormat format = each.fragment().charFormat();
                if (!format.anchorHref().isEmpty()) {
                    EXPECT_EQ(format.foreground().color(), ink);
                    EXPECT_TRUE(format.fontUnderline());
                    ++links;
                }
            }
        }
        EXPECT_GT(links, 3);
    }
}

TEST_P(Guide, EveryControlHasANameAndTheKeysReachIt) {
    trigger("F1");
    EXPECT_FALSE(page().accessibleName().isEmpty());
    EXPECT_FALSE(guide().findChild<QListWidget*>()->accessibleName().isEmpty());
    auto& field = *guide().findChild<QLineEdit*>();
    EXPECT_FALSE(field.accessibleName().isEmpty());
    EXPECT_EQ(field.nextInFocusChain(), guide().findChild<QListWidget*>());
    const auto shortcuts = guide().findChildren<QShortcut*>();
    QStringList keys;
    for (const QShortcut* each : shortcuts) {
        keys += each->key().toString(QKeySequence::PortableText);
    }
    EXPECT_EQ(keys, QStringList({"Ctrl+F", "F3", "Alt+Left", "Ctrl+P"}));
}

TEST_P(Guide, TablesHaveNoEmptyHeadAndKeepTheirOwn) {
    trigger("F1");
    for (const char* chapter : {"keys", "survey-day"}) {
        page().showChapter(chapter);
        int tables = 0;
        for (QTextFrame* frame : page().document()->rootFrame()->childFrames()) {
            const auto* table = qobject_cast<QTextTable*>(frame);
            ASSERT_NE(table, nullptr);
            EXPECT_FALSE(table->cellAt(0, 0).firstCursorPosition().block().text().isEmpty());
            ++tables;
        }
        EXPECT_GE(tables, 3) << chapter;
    }
    EXPECT_TRUE(
        page().toPlainText().contains(Tongue::spoken() == "de" ? "Grund\nworan" : "reason\nhow"));
}

TEST_P(Guide, KeepsEveryLineOfThePageOfKeys) {
    const QString name = Tongue::spoken() == "de" ? ":/desk/keys_de.txt" : ":/desk/keys.txt";
    QFile file(name);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    QTextDocument text;
    text.setMarkdown(window::guideText("keys"));
    const QString shown = text.toPlainText().simplified();
    for (const QString& line : QString::fromUtf8(file.readAll()).split('\n')) {
        for (const QString& part : line.split(QRegularExpression(" {2,}"), Qt::SkipEmptyParts)) {
            EXPECT_TRUE(shown.contains(part.simplified())) << part.toStdString();
        }
    }
}

TEST(KeysPage, LinesWithoutAKeyAreSentencesAndLinesFartherInGoOn) {
    const QString made = window::keysAsMarkdown(
        "Part\n  F1  help\n        and more\n  A sentence | here.\n", "Keys");
    QTextDocument text;
    text.setMarkdown(made);
    EXPECT_EQ(text.begin().text(), "Keys");
    EXPECT_TRUE(made.contains("| F1 | help and more |")) << made.toStdString();
    EXPECT_TRUE(text.toPlainText().contains("A sentence | here."));
}

TEST(GuideText, AnchorsAreLettersAndHyphens) {
    EXPECT_EQ(window::anchorOf("The day's track"), "the-days-track");
    EXPECT_EQ(window::anchorOf("Lotungen prüfen"), "lotungen-prüfen");
    EXPECT_EQ(window::anchorOf(" Find marks... "), "find-marks");
}
