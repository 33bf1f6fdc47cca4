// `tinworm report` and `work -o x.pdf` as a user runs them, read back with poppler and qpdf.
#include <algorithm>
#include <filesystem>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "photos/made_jpeg.hpp"
#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using testing::HasSubstr;
using testing::Not;

const std::string survey_text =
    "survey: 1\n"
    "body: small-body 2\n"
    "car: {name: Wherry 1200, built: 1967, owner: Zzyxowner, registration: Zzyxreg}\n"
    "visit: {date: 2025-04-12, by: S. Urveyor, place: Zzyxplace}\n"
    "kept: {use: salted}\n"
    "photos: {folder: photos, name: \"IMG_{}.jpg\"}\n"
    "seen:\n"
    "  bare: 11 51\n"
    "  hidden: {52: behind the Zzyxtrim}\n"
    "zones:\n"
    "  51:\n"
    "    reference: 1.10 1.11\n"
    "    found:\n"
    "      - rear end: pitting, firm, 120x60, metal .88 .86 .90, photo 1 2\n"
    "also:\n"
    "  - {what: tyres, code: \"3500\", say: cracked, when: before-use}\n"
    "price: {asked: 9500 EUR, sound: 14000 EUR}\n";

class ReportVerb : public testing::Test {
 protected:
  void SetUp() override {
    std::filesystem::create_directories(workshop.path("photos"));
    workshop.put("car.yaml", survey_text);
    photos::fixture::Recipe from_a_camera;
    from_a_camera.segments = {photos::fixture::exif(6), {0xFE, "Zzyxcomment"}};
    const std::string jpeg =
        photos::fixture::made_jpeg(photos::fixture::quarters(640, 480), from_a_camera);
    workshop.put("photos/IMG_1.jpg", jpeg);
    workshop.put("photos/IMG_2.jpg", jpeg);
  }

  Ended run(const std::string& arguments) const {
    return workshop.run(arguments + " --panels panels");
  }
  // What a shell command prints.
  std::string shell(const std::string& command) const {
    const Ended ended = workshop.run("--version", "(" + command + ") > read.txt");
    EXPECT_EQ(ended.messages, "") << command;
    return workshop.text("read.txt");
  }

  Workshop workshop;
};

TEST_F(ReportVerb, WritesThePaperAndSaysHowManyPages) {
  const Ended ended = run("report car.yaml -o car.pdf");
  EXPECT_EQ(ended.status, 0);
  EXPECT_THAT(ended.messages, testing::MatchesRegex("wrote car.pdf, [0-9]+ pages\n"));
  EXPECT_THAT(run("check car.yaml --matches car.pdf").results,
              testing::StartsWith("car.pdf: identical. "));
}

// The same date, for the same reason, as `compare` of the same surveys.
TEST_F(ReportVerb, LooksBackOnEarlierSurveys) {
  std::string older = survey_text;
  older.replace(older.find("2025-04-12"), 10, "2021-04-12");
  older.replace(older.find("metal .88 .86 .90"), 17, "metal 1.02 1.0 1.0");
  std::filesystem::create_directories(workshop.path("years"));
  for (const char* file : {"years/2021.yaml", "2021.yaml"}) workshop.put(file, older);
  older.replace(older.find("2021-04-12"), 10, "2017-04-12");
  for (const char* file : {"years/2017.yaml", "2017.yaml"}) workshop.put(file, older);
  for (const char* line : {"--before years", "--before 2017.yaml --before 2021.yaml"}) {
    const Ended ended = run(std::string("report car.yaml ") + line + " -o car.pdf");
    ASSERT_EQ(ended.status, 0) << ended.messages;
    const std::string said = shell("pdftotext -layout car.pdf - | tr -s ' \\n' ' '");
    EXPECT_THAT(said, HasSubstr("What changed since"));
    EXPECT_THAT(said, HasSubstr("Beside the surveys of 2017-04-12, 2021-04-12."));
    EXPECT_THAT(said, HasSubstr("mm lost since 2017-04-12"));
    EXPECT_THAT(said, Not(HasSubstr("beside earlier ones it may be sooner")));
    // Earlier surveys are looked for beside this one and the paper.
    for (const char* of : {"car.yaml", "2017.yaml"})
      EXPECT_THAT(run(std::string("check ") + of + " --matches car.pdf").results,
                  testing::StartsWith("car.pdf: identical. "));
    EXPECT_EQ(run("weigh car.pdf --format json").results,
              run("weigh car.yaml --format json").results);
  }
  const std::string compared = run("compare years car.yaml --format json").results;
  const std::size_t date = compared.find("\"next_survey\"");
  ASSERT_NE(date, std::string::npos);
  const std::string month = compared.substr(compared.find("\"date\": \"", date) + 9, 7);
  EXPECT_THAT(shell("pdftotext -f 1 -l 1 car.pdf -"), HasSubstr("By " + month));
}

TEST_F(ReportVerb, RefusesWhatDidNotComeBefore) {
  std::string later = survey_text;
  workshop.put("later.yaml", later.replace(later.find("2025-04-12"), 10, "2027-04-12"));
  const Ended ended = run("report car.yaml --before later.yaml -o car.pdf");
  EXPECT_EQ(ended.status, 2);
  EXPECT_EQ(ended.messages,
            "tinworm report: later.yaml is of 2027-04-12, after car.yaml\n"
            "--before takes earlier surveys.\n");
  EXPECT_EQ(run("report car.yaml --before car.yaml -o car.pdf").status, 2);
  EXPECT_EQ(run("report car.yaml --before nowhere.yaml -o car.pdf").status, 3);
  EXPECT_EQ(run("report car.yaml --before -o car.pdf").status, 2);
  EXPECT_FALSE(workshop.has("car.pdf"));
}

// The folder above the photos' own, or that itself.
TEST_F(ReportVerb, TakesPhotosFromWhereTheyLie) {
  ASSERT_EQ(run("report car.yaml -o car.pdf").status, 0);
  for (const char* line : {"report away/car.yaml --photos . -o as.pdf",
                           "report away/car.pdf --photos photos -o as.pdf"}) {
    const Ended ended = workshop.run(std::string(line) + " --panels panels",
                                     "mkdir -p away && cp car.yaml car.pdf away");
    EXPECT_EQ(ended.status, 0) << line << ended.messages;
    EXPECT_EQ(workshop.text("as.pdf"), workshop.text("car.pdf")) << line;
  }
  const Ended elsewhere = run("report car.yaml --photos panels -o as.pdf");
  EXPECT_EQ(elsewhere.status, 1);
  EXPECT_THAT(elsewhere.messages, HasSubstr("there is no such photo (found \"photos/IMG_1.jpg\""));
}

// Each question is followed by its answer, no other question between.
TEST_F(ReportVerb, TheFirstPageReadsInOrder) {
  ASSERT_EQ(run("report car.yaml -o car.pdf").status, 0);
  std::string page = shell("pdftotext -f 1 -l 1 car.pdf -");
  std::ranges::replace(page, '\n', ' ');
  const std::pair<std::string, std::string> answers[] = {
      {"Can it be driven?",
       "Not yet; then not settled: what nobody saw could forbid it Verdict: to be mended."},
      {"Before it is driven:", "tyres (code 3500, 24 years old): cracked."},
      {"The worst place",
       "1 Outer sill, left (51), rear end: thin 80 % of the metal left (74 to 85), measured;"},
      {"Not seen, or only judged, and could change it", "One part could make the verdict worse"},
      {"Look again", "By 2025-10 (after the repair"},
      {"What to do first", "Open up and measure: outer sill, right (52)."},
      {"What to stop now", "Keep it off salted roads"},
      {"What it may take", "By assumptions, no quote: about"}};
  for (const auto& [question, answer] : answers) {
    const std::size_t at = page.find(question);
    ASSERT_NE(at, std::string::npos) << question << "\n" << page;
    std::string rest = page.substr(at + question.size());
    rest.erase(0, rest.find_first_not_of(' '));
    EXPECT_EQ(rest.substr(0, answer.size()), answer);
  }
}

TEST_F(ReportVerb, HasOutlineLinksLabelsAndEmbeddedFonts) {
  ASSERT_EQ(run("report car.yaml -o car.pdf").status, 0);
  const std::string pdf = shell("qpdf --qdf --object-streams=disable car.pdf -");
  const auto count = [&](std::string_view what) {
    std::size_t found = 0;
    for (std::size_t at = pdf.find(what); at != std::string::npos; at = pdf.find(what, at + 1))
      ++found;
    return found;
  };
  for (const char* part :
       {"At a glance", "What was found, by urgency", "Repairs found", "The shell as a whole",
        "What else was seen", "Plan of work", "Every part", "How it was judged", "Signed"})
    EXPECT_EQ(count(fmt::format("/Title ({})", part)), 1U) << part;
  EXPECT_GE(count("/Subtype /Link"), 6U);
  EXPECT_EQ(count("/PageLabels"), 1U);
  const std::string fonts = shell("pdffonts car.pdf | tail -n +3");
  EXPECT_THAT(fonts, HasSubstr("DejaVu"));
  for (const char* line : {" no  yes", " no no", " no  no"})
    EXPECT_THAT(fonts, Not(HasSubstr(line)));
}

TEST_F(ReportVerb, PhotosBringNothingButThePicture) {
  ASSERT_EQ(run("report car.yaml -o car.pdf").status, 0);
  const std::string pictures = shell("pdfimages -list car.pdf | tail -n +3");
  EXPECT_THAT(pictures, HasSubstr("jpeg"));
  // Turned upright: orientation 6 makes 640 x 480 stand.
  EXPECT_THAT(pictures, HasSubstr("480   640"));
  const std::string bytes = shell("pdfimages -j car.pdf img && cat img-*.jpg");
  EXPECT_THAT(bytes, HasSubstr("JFIF"));
  for (const char* secret : {"Exif", "Zzyx", "http:"}) EXPECT_THAT(bytes, Not(HasSubstr(secret)));
  const std::string pdf = workshop.text("car.pdf");
  EXPECT_THAT(pdf, Not(HasSubstr("Exif")));
  EXPECT_THAT(pdf, Not(HasSubstr("Zzyxcomment")));
}

TEST_F(ReportVerb, APhotoThatIsMissingStopsItUnlessGapsAreWanted) {
  std::filesystem::remove(workshop.path("photos/IMG_1.jpg"));
  workshop.put("photos/IMG_2.jpg", "no jpeg at all");
  const Ended refused = run("report car.yaml -o car.pdf");
  EXPECT_EQ(refused.status, 1);
  EXPECT_THAT(refused.messages, HasSubstr("car.yaml:14:"));
  EXPECT_THAT(refused.messages, HasSubstr("--missing-photos"));
  EXPECT_FALSE(workshop.has("car.pdf"));
  const Ended gaps = run("report car.yaml -o car.pdf --missing-photos");
  EXPECT_EQ(gaps.status, 0);
  EXPECT_THAT(gaps.messages,
              testing::MatchesRegex("wrote car.pdf, [0-9]+ pages, 2 photos missing\n"));
  EXPECT_THAT(shell("pdftotext car.pdf - | grep -c 'Photo missing'"), HasSubstr("2"));
}

TEST_F(ReportVerb, NoPhotoIsReplacedThroughALink) {
  const std::string photo = workshop.text("photos/IMG_1.jpg");
  std::filesystem::create_symlink("photos/IMG_1.jpg", workshop.path("link.pdf"));
  std::filesystem::create_hard_link(workshop.path("photos/IMG_1.jpg"), workshop.path("hard.pdf"));
  for (const std::string to : {"link.pdf", "hard.pdf"}) {
    const Ended ended = run("report car.yaml -o " + to);
    EXPECT_EQ(ended.status, 2);
    EXPECT_EQ(ended.messages, "tinworm report: " + to +
                                  " is itself to be read; it is never written\n"
                                  "Give the output another name.\n");
    EXPECT_EQ(workshop.text("photos/IMG_1.jpg"), photo);
  }
}

TEST_F(ReportVerb, TheSameSurveyGivesTheSameBytes) {
  ASSERT_EQ(run("report car.yaml -o a.pdf").status, 0);
  ASSERT_EQ(run("report car.yaml -o b.pdf --jobs 1").status, 0);
  EXPECT_EQ(workshop.text("a.pdf"), workshop.text("b.pdf"));
}

TEST_F(ReportVerb, LetterAndInches) {
  ASSERT_EQ(run("report car.yaml -o car.pdf --paper letter --units inch").status, 0);
  EXPECT_THAT(shell("pdfinfo car.pdf"), HasSubstr("612 x 792"));
  EXPECT_THAT(shell("pdftotext car.pdf -"), HasSubstr("thou"));
}

TEST_F(ReportVerb, ThePlanOfWorkAloneHasNothingPrivate) {
  ASSERT_EQ(run("work car.yaml -o work.pdf").status, 0);
  const std::string text = shell("pdftotext work.pdf - && pdfinfo work.pdf");
  EXPECT_THAT(text, HasSubstr("Tasks in order"));
  for (const char* secret : {"Zzyxowner", "Zzyxreg", "Zzyxplace", "9 500", "9500", "14 000"})
    EXPECT_THAT(text, Not(HasSubstr(secret))) << secret;
  EXPECT_THAT(run("check car.yaml --matches work.pdf").results,
              testing::StartsWith("work.pdf: identical. "));
}

// What README says gets into it of what was typed: these words, and no others.
TEST_F(ReportVerb, ThePlanOfWorkHoldsTheFreeWordsThatReadmeNames) {
  workshop.put("car.yaml",
               "survey: 1\n"
               "body: small-body 2\n"
               "car: {name: ZzinName, built: 1967, owner: ZzoutOwner, registration: ZzoutReg,\n"
               "  chassis-number: ZzoutChassis, odometer: 98765 km}\n"
               "visit: {date: 2025-04-12, reason: sale, by: ZzoutBy, interest: ZzoutInterest,\n"
               "  place: ZzoutPlace}\n"
               "gaps: [{where: ZzoutGap, wheels: 4 mm, lift: 3 mm}]\n"
               "seen:\n"
               "  bare: 51\n"
               "  hidden: {52: ZzinReason}\n"
               "zones:\n"
               "  51:\n"
               "    note: ZzoutNote\n"
               "    found:\n"
               "      - ZzinSpot: hole, breaks, 60x40, ZzoutSpotNote\n"
               "    repairs:\n"
               "      - lapped, 2016, ZzoutRepairNote\n"
               "  own-a: {name: ZzinOwn, role: main, side: left, seen: bare,\n"
               "    note: ZzoutOwnNote, found: [{spot: ZzinOwnSpot, rust: hole}]}\n"
               "also: [{what: ZzoutWhat, say: ZzoutSay, when: before-use}]\n"
               "price: {asked: 98765 EUR, sound: 98765 EUR}\n");
  workshop.put("zzinrules.yaml", "rules: 1\nname: ZzinRules\nnear-radius: 400 mm\n");
  workshop.put("zzinrates.yaml", "rates: 1\nname: ZzinRates\nhour: 99\n");
  const std::string work = "work car.yaml --rules zzinrules.yaml --rates zzinrates.yaml -o ";
  ASSERT_EQ(run(work + "work.pdf").status, 0);
  ASSERT_EQ(run(work + "work.txt").status, 0);
  ASSERT_EQ(run(work + "work.json").status, 0);
  ASSERT_EQ(run(work + "work.csv").status, 0);
  // Words may be torn at the end of a line: the table's columns are narrow.
  const std::string pdf = shell("pdftotext work.pdf - | tr -d '\\n -'; pdfinfo work.pdf");
  for (const char* in : {"ZzinName", "ZzinReason", "ZzinSpot", "ZzinOwn", "ZzinOwnSpot",
                         "zzinrules.yaml", "ZzinRules", "zzinrates.yaml", "ZzinRates"})
    EXPECT_THAT(pdf, HasSubstr(in));
  for (const std::string& text :
       {pdf, workshop.text("work.txt"), workshop.text("work.json"), workshop.text("work.csv")})
    EXPECT_THAT(text, Not(HasSubstr("Zzout")));
  EXPECT_THAT(pdf, Not(HasSubstr("98765")));
  EXPECT_THAT(workshop.text("work.txt"), HasSubstr("98765 km"));
}

TEST_F(ReportVerb, SaysWhatItRefuses) {
  const struct {
    std::string arguments, messages;
    int status = 2;
  } cases[] = {
      {"report", "tinworm report: the survey to read is missing\ntinworm report SURVEY.yaml\n"},
      {"report car.yaml",
       "tinworm report: where to write is missing\ntinworm report car.yaml -o report.pdf\n"},
      {"report car.yaml good.yaml -o a.pdf",
       "tinworm report: takes one survey\ntinworm report SURVEY.yaml -o report.pdf\n"},
      {"report car.yaml -o a.png", "tinworm report: report doesn't make png\nIt makes pdf.\n"},
      {"report car.yaml -o a.pdf --paper a5",
       "tinworm report: --paper takes a4, a3 or letter, not \"a5\"\n"},
      {"report car.yaml -o a.pdf --private", "tinworm report: there is no option --private\n"},
      {"report bad.yaml -o a.pdf", bad_survey_problems, 1},
      {"report car.yaml -o none/a.pdf",
       "tinworm: none/a.pdf: its folder does not exist (make the folder first)\n", 3},
      {"work car.yaml good.yaml -o a.pdf",
       "tinworm work: a PDF holds the plan of one survey\ntinworm work SURVEY.yaml -o work.pdf\n"},
      {"work car.yaml -o a.csv --paper a4",
       "tinworm work: --paper is for a PDF\nName one with -o: work.pdf.\n"}};
  for (const auto& each : cases) {
    const Ended ended = run(each.arguments);
    EXPECT_EQ(ended.status, each.status) << each.arguments;
    EXPECT_EQ(ended.messages, each.messages) << each.arguments;
    EXPECT_FALSE(workshop.has("a.pdf")) << each.arguments;
  }
}

}  // namespace
}  // namespace tinworm::verbs
