// What a PDF carries, and what strangers may have made of one. Structure of PDFs: ISO 32000-1, 7.5
// (tables of objects), 7.4 (filters), 7.9.6 (name trees), 7.11.4 (embedded files).
#include "attachments/attachments.hpp"

#define POINTERHOLDER_TRANSITION 4  // shared pointers are std::shared_ptr

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <functional>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <qpdf/Pl_String.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include "painting/picture.hpp"

namespace tinworm::attachments {
namespace {

using testing::HasSubstr;

const std::vector<Attachment>& files() {
  static const std::vector<Attachment> all = {{Role::survey, "wherry.yaml", "survey: 1\n"},
                                              {Role::rules, "salted.yaml", "rules: 1\n"}};
  return all;
}

std::string blank_paper() {
  painting::Metadata metadata;
  metadata.date = "2025-04-12T00:00:00Z";
  metadata.record = "how it was made";
  return painting::to_pdf({scene::Page{}}, metadata);
}

std::string paper() {
  return with_attachments(blank_paper(), files());
}

class InFile {
 public:
  explicit InFile(const std::string& bytes)
      : path_(std::filesystem::temp_directory_path() /
              ("tinworm-paper-" + std::to_string(::getpid()) + ".pdf")) {
    std::ofstream(path_, std::ios::binary) << bytes;
  }
  InFile(const InFile&) = delete;
  InFile& operator=(const InFile&) = delete;
  ~InFile() { std::filesystem::remove(path_); }
  std::string path() const { return path_.string(); }

 private:
  std::filesystem::path path_;
};

tl::expected<Carried, Refusal> read(const std::string& bytes) {
  return carried_by(InFile(bytes).path());
}

TEST(Attachments, ComeBackAsTheyWentIn) {
  const auto carried = read(paper());
  ASSERT_TRUE(carried) << carried.error().what;
  EXPECT_EQ(carried->attachments, files());
  EXPECT_EQ(carried->keywords, "how it was made");
}

TEST(Attachments, OfAnyBytesAndNames) {
  const std::vector<Attachment> odd = {
      {Role::survey, "W\xC3\xA4hre (1) \\ [x].yaml", std::string("\0\xFF(\r\n", 5)},
      {Role::plan, "same.yaml", ""},
      {Role::rates, "same.yaml", std::string(most_attached_bytes, 'x')}};
  const auto carried = read(with_attachments(blank_paper(), odd));
  ASSERT_TRUE(carried) << carried.error().what;
  EXPECT_EQ(carried->attachments, odd);
}

TEST(Attachments, MakeTheSameBytesAgain) {
  EXPECT_EQ(paper(), paper());
}

TEST(Attachments, AreNoneInAPaperWithout) {
  const auto carried = read(with_attachments(blank_paper(), {}));
  ASSERT_TRUE(carried) << carried.error().what;
  EXPECT_TRUE(carried->attachments.empty());
}

// --- what strangers make of it

std::string replaced(std::string bytes, const std::string& from, const std::string& to) {
  const std::size_t at = bytes.rfind(from);
  if (at == bytes.npos) throw std::logic_error("no " + from);
  return bytes.replace(at, from.size(), to);
}

using Change = std::function<void(QPDF&)>;
using Settings = std::function<void(QPDFWriter&)>;

std::string rewritten(const Change& change, const Settings& settings) {
  const std::string bytes = paper();
  QPDF pdf;
  pdf.processMemoryFile("paper", bytes.data(), bytes.size());
  change(pdf);
  std::string out;
  Pl_String taken("paper", nullptr, out);
  QPDFWriter writer(pdf);
  writer.setOutputPipeline(&taken);
  writer.setDeterministicID(true);
  settings(writer);
  writer.write();
  return out;
}

void as_ours(QPDFWriter& writer) {
  writer.setObjectStreamMode(qpdf_o_disable);
}

std::string changed(const Change& change) {
  return rewritten(change, as_ours);
}

std::string saved(const Settings& settings) {
  return rewritten([](QPDF&) {}, settings);
}

QPDFObjectHandle survey_stream(QPDF& pdf) {
  return QPDFEmbeddedFileDocumentHelper(pdf)
      .getEmbeddedFile("1 wherry.yaml")
      ->getEmbeddedFileStream();
}

std::string with_filter(const std::string& filter) {
  return rewritten(
      [&](QPDF& pdf) {
        QPDFObjectHandle stream = survey_stream(pdf);
        stream.replaceStreamData("survey: 1", QPDFObjectHandle::parse(filter),
                                 QPDFObjectHandle::newNull());
      },
      [](QPDFWriter& writer) {
        as_ours(writer);
        writer.setDecodeLevel(qpdf_dl_none);
        writer.setCompressStreams(false);
      });
}

std::string with_names(const std::string& names) {
  return changed([&](QPDF& pdf) {
    QPDFObjectHandle tree = pdf.makeIndirectObject(QPDFObjectHandle::newDictionary());
    pdf.getRoot().getKey("/Names").replaceKey("/EmbeddedFiles", tree);
    QPDFObjectHandle parsed = QPDFObjectHandle::parse(&pdf, names);
    if (parsed.isDictionary() && parsed.hasKey("/Loop")) {
      tree.replaceKey("/Kids", QPDFObjectHandle::newArray({tree}));
    } else {
      tree.replaceKey("/Names", parsed);
    }
  });
}

const char* const anew = "was saved anew by another program";
const char* const cut_off = "is cut off or broken at its end";
const char* const inside = "is broken inside";
const char* const form = "carries the survey, as typed in a form that tinworm never writes";

struct Hostile {
  const char* what;
  std::function<std::string()> bytes;
  const char* refused;
};

const std::vector<Hostile>& hostile() {
  static const std::vector<Hostile> all = {
      {"not a PDF", [] { return std::string("survey: 1\n"); }, "isn't a PDF"},
      {"nothing", [] { return std::string(); }, "isn't a PDF"},
      {"its first line alone", [] { return std::string("%PDF-1.5\n"); }, cut_off},
      {"the first half", [] { return paper().substr(0, paper().size() / 2); }, cut_off},
      {"more behind its end", [] { return paper() + std::string(5000, ' '); }, cut_off},
      {"a table that begins nowhere",
       [] { return replaced(paper(), "startxref\n", "startxref\n999999999999"); }, anew},
      {"a table's place that is no number",
       [] { return replaced(paper(), "startxref\n", "startxref\nxx"); }, cut_off},
      {"a table's place beyond all numbers",
       [] { return replaced(paper(), "startxref\n", "startxref\n99999999999999999999999"); },
       cut_off},
      {"more objects than a table may have",
       [] { return replaced(paper(), "xref\n0 ", "xref\n0 999999999"); }, anew},
      {"an entry that leads elsewhere",
       [] {
         std::string bytes = paper();
         const std::size_t first = bytes.rfind("xref\n0 ", bytes.rfind("startxref"));
         return bytes.replace(bytes.find(" f \n", first) + 4, 10, "0000000030");
       },
       inside},
      {"an older table that is this one",
       [] { return replaced(paper(), "trailer << ", "trailer << /Prev 9 "); }, anew},
      {"a second, packed table",
       [] { return replaced(paper(), "trailer << ", "trailer << /XRefStm 9 "); }, anew},
      {"a name written another way",
       [] { return replaced(paper(), "trailer << ", "trailer << /Pr#65v 9 "); }, anew},
      {"no root", [] { return replaced(paper(), "/Root ", "/Rust "); }, inside},
      {"packed objects",
       [] { return saved([](QPDFWriter& w) { w.setObjectStreamMode(qpdf_o_generate); }); }, anew},
      {"laid out for the web",
       [] {
         return saved([](QPDFWriter& w) {
           as_ours(w);
           w.setLinearization(true);
         });
       },
       anew},
      {"locked",
       [] {
         const std::string bytes = paper();
         QPDF pdf;
         pdf.processMemoryFile("paper", bytes.data(), bytes.size());
         std::string out;
         Pl_String taken("paper", nullptr, out);
         QPDFWriter w(pdf);
         w.setOutputPipeline(&taken);
         w.setR6EncryptionParameters("us", "owner", true, true, true, true, true, true,
                                     qpdf_r3p_full, true);
         as_ours(w);
         w.write();
         return out;
       },
       "is locked with a password"},
      {"a bomb",
       [] {
         return with_attachments(blank_paper(),
                                 {{Role::survey, "w.yaml", std::string(64u << 20, 'a')}});
       },
       "carries more than 1 MiB as the survey, as typed"},
      {"one byte too many",
       [] {
         return with_attachments(
             blank_paper(), {{Role::survey, "w.yaml", std::string(most_attached_bytes + 1, 'a')}});
       },
       "carries more than 1 MiB as the survey, as typed"},
      {"packed twice", [] { return with_filter("[/FlateDecode /FlateDecode]"); }, form},
      {"packed otherwise", [] { return with_filter("/LZWDecode"); }, form},
      {"a picture", [] { return with_filter("/DCTDecode"); }, form},
      {"as digits", [] { return with_filter("/ASCIIHexDecode"); }, form},
      {"not what its filter says", [] { return with_filter("/FlateDecode"); },
       "carries the survey, as typed, but it is broken"},
      {"more surveys than any paper has",
       [] {
         return with_attachments(blank_paper(), {{Role::survey, "1.yaml", ""},
                                                 {Role::survey, "2.yaml", ""},
                                                 {Role::survey, "3.yaml", ""},
                                                 {Role::survey, "4.yaml", ""},
                                                 {Role::survey, "5.yaml", ""}});
       },
       "carries more files than tinworm ever writes"},
      {"names that go round", [] { return with_names("<</Loop true>>"); }, inside},
      {"names without files", [] { return with_names("[(a) (b) (c)]"); }, inside},
      {"names of numbers", [] { return with_names("[1 2 3 4]"); }, inside},
  };
  return all;
}

TEST(Attachments, OfStrangersAreRefusedWithWords) {
  for (const Hostile& each : hostile()) {
    const auto carried = read(each.bytes());
    ASSERT_FALSE(carried) << each.what;
    EXPECT_EQ(carried.error().what, each.refused) << each.what;
    EXPECT_NE(carried.error().cure, "") << each.what;
  }
}

TEST(Attachments, OfAFolderOrNothingAreRefused) {
  EXPECT_FALSE(carried_by("/"));
  EXPECT_FALSE(carried_by("/no/such/file.pdf"));
}

// What is wrong may still read: the fingerprint in the paper's record is what holds then.
TEST(Attachments, WithAnyByteChangedAreReadOrRefused) {
  const std::string whole = paper();
  int refused = 0, read_well = 0;
  for (std::size_t at = 0; at < whole.size(); at += 7) {
    std::string bytes = whole;
    bytes[at] = static_cast<char>(bytes[at] ^ 0x15);
    read(bytes) ? ++read_well : ++refused;
  }
  EXPECT_GT(refused, 20);
  EXPECT_GT(read_well, 20);
}

}  // namespace
}  // namespace tinworm::attachments
