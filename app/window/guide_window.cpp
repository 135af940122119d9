// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/guide_window.h"

#include "app/preferences/preferences.h"
#include "app/widgets/ink_roles.h"
#include "app/window/guide_text.h"

#include <QDialogButtonBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QPushButton>
#include <QScreen>
#include <QScrollBar>
#include <QShortcut>
#include <QSignalBlocker>
#include <QTextBlock>
#include <QTextTable>
#include <QVBoxLayout>

#include <memory>

namespace window {

namespace {

constexpr QLatin1String guideScheme("guide");
constexpr QLatin1String suffix(".md");
constexpr QLatin1String picturesFolder("pictures/");
constexpr QLatin1String stateKey("guide");
constexpr QSize usualSize{1040, 720};
constexpr int chaptersWidth = 200;
constexpr double cellPadding = 4.0;
constexpr double pageMargin = 14.0;
constexpr double paperType = 9.5; // points

/// The chapter that an address means; empty where it leads out of the guide.
QString chapterOf(const QUrl& url) {
    const QString file = url.fileName();
    const QString name = file.endsWith(suffix) ? file.chopped(suffix.size()) : QString();
    return url.scheme() == guideScheme && guideChapters().contains(name) ? name : QString();
}

void dressHeading(const QTextBlock& block) {
    QTextCursor heading(block);
    heading.movePosition(QTextCursor::EndOfBlock, QTextCursor::KeepAnchor);
    QTextCharFormat named;
    named.setAnchor(true);
    named.setAnchorNames({anchorOf(block.text())});
    heading.mergeCharFormat(named);
}

void dressLinks(const QTextBlock& block, const QColor& ink) {
    std::vector<std::pair<int, int>> links; // what is dressed parts the fragments anew
    for (auto each = block.begin(); !each.atEnd(); ++each) {
        if (!each.fragment().charFormat().anchorHref().isEmpty()) {
            links.emplace_back(each.fragment().position(), each.fragment().length());
        }
    }
    QTextCharFormat underlined;
    underlined.setForeground(ink);
    underlined.setFontUnderline(true);
    for (const auto& [position, length] : links) {
        QTextCursor link(block);
        link.setPosition(position);
        link.setPosition(position + length, QTextCursor::KeepAnchor);
        link.mergeCharFormat(underlined);
    }
}

/// Thin lines, room round the words, and no head where it says nothing.
void dressTable(QTextTable& table, const QColor& line) {
    bool hasHead = false;
    for (int column = 0; column < table.columns(); ++column) {
        hasHead =
            hasHead || !table.cellAt(0, column).firstCursorPosition().block().text().isEmpty();
    }
    if (!hasHead) {
        table.removeRows(0, 1);
    }
    QTextTableFormat format = table.format();
    format.setBorderCollapse(true);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorderBrush(line);
    format.setBorder(1.0);
    format.setCellSpacing(0.0);
    format.setCellPadding(cellPadding);
    table.setFormat(format);
}

} // namespace

GuidePage::GuidePage(QWidget* parent) : QTextBrowser(parent) {
    document()->setUndoRedoEnabled(false);
    document()->setDocumentMargin(pageMargin);
    connect(this, &QTextBrowser::sourceChanged, this, [this] { dress(); });
}

QString GuidePage::chapter() const {
    return chapterOf(source());
}

void GuidePage::showChapter(const QString& chapter, const QString& heading) {
    QUrl url(guideScheme + QStringLiteral(":/") + chapter + suffix);
    if (!heading.isEmpty()) {
        url.setFragment(anchorOf(heading));
    }
    setSource(url);
}

void GuidePage::doSetSource(const QUrl& url, QTextDocument::ResourceType type) {
    static_cast<void>(type);
    if (chapterOf(url).isEmpty()) {
        emit addressMet(url.toDisplayString());
        return;
    }
    QTextBrowser::doSetSource(url, QTextDocument::MarkdownResource);
    // Headings have had no names before, so that nothing led to them yet.
    if (url.hasFragment()) {
        scrollToAnchor(url.fragment(QUrl::FullyDecoded));
    }
}

QVariant GuidePage::loadResource(int type, const QUrl& url) {
    if (type == QTextDocument::MarkdownResource) {
        return guideText(chapterOf(url));
    }
    // What is not there is an empty picture and no silence, upon which Qt would look for a file.
    QImage picture(1, 1, QImage::Format_ARGB32);
    picture.fill(Qt::transparent);
    if (type == QTextDocument::ImageResource && url.scheme() == guideScheme) {
        const QImage own = guidePicture(picturesFolder + url.fileName());
        picture = own.isNull() ? picture : own;
    }
    // Kept with the text, so that what is printed has it too.
    document()->addResource(type, url, picture);
    return picture;
}

void GuidePage::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        dress();
    }
}

void GuidePage::dress() {
    const QColor ink = palette().color(QPalette::Text);
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() > 0) {
            dressHeading(block);
        }
        dressLinks(block, ink);
    }
    const QColor line = palette().color(widgets::sandRole);
    for (QTextFrame* frame : document()->rootFrame()->childFrames()) {
        if (auto* table = qobject_cast<QTextTable*>(frame)) {
            dressTable(*table, line);
        }
    }
}

GuideWindow::GuideWindow(QWidget* parent)
    : QDialog(parent), page_(new GuidePage(this)), chapters_(new QListWidget(this)),
      wanted_(new QLineEdit(this)), said_(new QLabel(this)) {
    setWindowTitle(tr("Guide"));
    layOut();
    wire();
    resize(usualSize.boundedTo(screen()->availableGeometry().size() * 0.95));
    restoreGeometry(preferences::Preferences::stateOf(stateKey));
}

GuideWindow::~GuideWindow() {
    preferences::Preferences::keepState(stateKey, saveGeometry());
}

void GuideWindow::layOut() {
    for (const QString& chapter : guideChapters()) {
        auto* row = new QListWidgetItem(guideTitle(chapter), chapters_);
        row->setData(Qt::UserRole, chapter);
    }
    chapters_->setAccessibleName(tr("Chapters"));
    chapters_->setFixedWidth(chaptersWidth * fontMetrics().height() / 16);
    chapters_->setWordWrap(true);
    chapters_->setSpacing(3);
    page_->setAccessibleName(tr("The guide"));
    wanted_->setPlaceholderText(tr("Find in the guide"));
    wanted_->setAccessibleName(tr("Find in the guide"));
    wanted_->setToolTip(tr("Enter goes on to the next place (Ctrl+F)"));
    wanted_->setClearButtonEnabled(true);
    said_->setTextFormat(Qt::PlainText);
    said_->setWordWrap(true);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    QPushButton* back = buttons->addButton(tr("Back"), QDialogButtonBox::ActionRole);
    QPushButton* print = buttons->addButton(tr("Print…"), QDialogButtonBox::ActionRole);
    back->setEnabled(false);
    back->setToolTip(tr("To where you read before (Alt+Left)"));
    print->setToolTip(tr("This chapter, as it will be printed (Ctrl+P)"));
    for (QAbstractButton* each : buttons->buttons()) {
        qobject_cast<QPushButton*>(each)->setAutoDefault(false); // Enter belongs to the field
    }
    connect(back, &QPushButton::clicked, page_, &QTextBrowser::backward);
    connect(page_, &QTextBrowser::backwardAvailable, back, &QPushButton::setEnabled);
    connect(print, &QPushButton::clicked, this, [this] { preview(); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* left = new QVBoxLayout;
    left->addWidget(wanted_);
    left->addWidget(chapters_, 1);
    auto* across = new QHBoxLayout;
    across->addLayout(left);
    across->addWidget(page_, 1);
    auto* below = new QHBoxLayout;
    below->addWidget(said_, 1);
    below->addWidget(buttons);
    auto* all = new QVBoxLayout(this);
    all->addLayout(across, 1);
    all->addLayout(below);
    setTabOrder(wanted_, chapters_);
    setTabOrder(chapters_, page_);
    setTabOrder(page_, back);
    setTabOrder(back, print);
}

void GuideWindow::wire() {
    connect(chapters_, &QListWidget::currentRowChanged, this, [this] {
        const QString chapter = chapters_->currentItem()->data(Qt::UserRole).toString();
        if (chapter != page_->chapter()) {
            page_->showChapter(chapter);
        }
    });
    connect(page_, &QTextBrowser::sourceChanged, this,
            [this](const QUrl& url) { takeChapter(chapterOf(url)); });
    connect(page_, &GuidePage::addressMet, this, [this](const QString& address) {
        said_->setText(tr("The guide stays offline. The address is %1").arg(address));
    });
    connect(wanted_, &QLineEdit::returnPressed, this, [this] { findNext(); });
    const auto on = [this](const QString& key, const std::function<void()>& act) {
        connect(new QShortcut(QKeySequence(key), this), &QShortcut::activated, this, act);
    };
    on(QStringLiteral("Ctrl+F"), [this] {
        wanted_->setFocus(Qt::ShortcutFocusReason);
        wanted_->selectAll();
    });
    on(QStringLiteral("F3"), [this] { findNext(); });
    on(QStringLiteral("Alt+Left"), [this] { page_->backward(); });
    on(QStringLiteral("Ctrl+P"), [this] { preview(); });
}

void GuideWindow::openAt(const QString& chapter, const QString& heading) {
    show(); // first, since where a heading stands depends on how wide the page is
    raise();
    activateWindow();
    page_->showChapter(chapter, heading);
    page_->setFocus(Qt::OtherFocusReason);
}

void GuideWindow::takeChapter(const QString& chapter) {
    said_->clear();
    // The page is not yet the one that it is becoming: the list is not to ask for it again.
    const QSignalBlocker quiet(chapters_);
    chapters_->setCurrentRow(static_cast<int>(guideChapters().indexOf(chapter)));
}

void GuideWindow::findNext() {
    const QString words = wanted_->text();
    said_->clear();
    if (words.isEmpty() || page_->find(words)) {
        return;
    }
    const QStringList all = guideChapters();
    const qsizetype here = all.indexOf(page_->chapter());
    for (qsizetype i = 1; i <= all.size(); ++i) {
        const QString& chapter = all[(here + i) % all.size()];
        QTextDocument text;
        text.setMarkdown(guideText(chapter));
        if (!text.find(words).isNull()) {
            page_->showChapter(chapter);
            page_->moveCursor(QTextCursor::Start);
            page_->find(words);
            return;
        }
    }
    said_->setText(tr("“%1” stands nowhere in the guide.").arg(words));
}

void GuideWindow::preview() {
    QPrinter printer(QPrinter::HighResolution);
    QPrintPreviewDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("The chapter, as it will be printed"));
    connect(&dialog, &QPrintPreviewDialog::paintRequested, this,
            [this](QPrinter* page) { printChapter(*page_->document(), *page); });
    dialog.exec();
}

void printChapter(const QTextDocument& chapter, QPrinter& printer) {
    const std::unique_ptr<QTextDocument> paper(chapter.clone());
    QFont font = paper->defaultFont();
    font.setPointSizeF(paperType);
    paper->setDefaultFont(font);
    QTextCursor all(paper.get());
    all.select(QTextCursor::Document);
    QTextCharFormat black;
    black.setForeground(Qt::black);
    all.mergeCharFormat(black);
    paper->print(&printer);
}

} // namespace window
