// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Reflectance of the 24-patch chart of ISO 17321-1. Source: Ohta 1997. */
export const CHART_24 = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 81),
  "dark skin": /* @__PURE__ */ unpack(3, 2, "*ggccadfbdcbcacacbcacaacaabebcbabacbeeagbcbadbaaaaacbeccaacaaedcaccbegideflkddr(jck"),
  "light skin": /* @__PURE__ */ unpack(3, 2, "-{(eicfrjfaaaccceaeeaaddfbeielrpakqidjbguwwobjnlhjddadagabcccgecdccbercgfhdnmger(viw"),
  "blue sky": /* @__PURE__ */ unpack(3, 2, ".q(uwsez|thjbadcdbbbadbcbcabcbabgeaebcdbcaccabcaaabacbcacbacaacacbcbcaaaaedaaedceea"),
  "foliage": /* @__PURE__ */ unpack(3, 2, "*gcbacdccbcaaacaabcbacbcaiiqmcntnlhdcaekedabdccececdbbcacaeekmokscbpthhjbdlmaehzii"),
  "blue flower": /* @__PURE__ */ unpack(3, 2, "/g(}(c(csz(r|tndbdbdabbafdibaadhhfcimimedhckgiebdaadhdeigqokmaahjhlnbfbbdaccdcjgegjzmk"),
  "bluish green": /* @__PURE__ */ unpack(3, 2, ".k(qwogxzpfbaccceggoekblnnlhhbfddfddfbaaabacabiiiggcebccaececebabadfdadkbmgaacbjpgc"),
  "orange": /* @__PURE__ */ unpack(3, 2, "*qcbaaabcbcaaaaaaaacaaaacacciekiiiceekichhjnjjbdbdaabbeafbaaccabaabcfagdcfhkgen(lke"),
  "purplish blue": /* @__PURE__ */ unpack(3, 2, "-s(mssgjxnjdeabdlpjhfhhddiggceagggecbbcacgaebabbaaccececbcddfddcceccaeacciggggclbgg"),
  "moderate red": /* @__PURE__ */ unpack(3, 3, "-myglajmaebgafefgdgfabccccbdacacedcahacgsmgjrrpfaikbgcccdaeacbbgdbbecdededfoablx(ic"),
  "purple": /* @__PURE__ */ unpack(3, 2, "-w}medllhbvafabaaaecccccaebeacbacaccaabbaaccceeggccbbbcbbccagcedgbcdbccddclebcp(beo"),
  "yellow green": /* @__PURE__ */ unpack(3, 2, "*webbcabacaacaccaeegggkmqyscdxx|tjnhbdbdbfaddeiigggaaccccgecccbdcfdhbaeiigbebcpzfi"),
  "orange yellow": /* @__PURE__ */ unpack(3, 2, "+accbabbcaaacbcaaagagcabcaegoosqmcnlnlfdhdaffbbbaaabaacaddaaecbbcabdaaebbalkgel(pkm"),
  "blue": /* @__PURE__ */ unpack(3, 2, "+syggidbbfcicicnxvtpnjackikigiceeaccaaaacbcaabccbaacbcbacbacbaacacabcccaeggcgeddia"),
  "green": /* @__PURE__ */ unpack(3, 2, "*ucaabacbaccbcaccaecgeagemkqmhv~xpjlbdcbcaeacegggeecaaacaacaebcacadbcbabibcebafaba"),
  "red": /* @__PURE__ */ unpack(3, 3, "*oaaabededebaaaabededccdebaaaaaaacbaacaacceieiafnzbnckkcdiacgbhgabaaaaifbbaighl(h(yg"),
  "yellow": /* @__PURE__ */ unpack(3, 2, "*sbedcaabcacbacaaegiquqskcfjbfdjhfnfaadabdaddbabbcaaabccfbbcaefeacfcdbiddbdcmaf(zkm"),
  "magenta": /* @__PURE__ */ unpack(3, 2, ".{(s{ym(b(ftlnjhbdbbccaadecgccbdaaigigbdbeimoookouokhhttphllhddbcfcbabbbagadddckah(xqo"),
  "cyan": /* @__PURE__ */ unpack(3, 2, "-g(eomclnndgbiiabagefjllnlhjfhbdccagaggggegecbeaccacaaaacaabcdaacbacbgacciemcicnlbd"),
  "white 9.5": /* @__PURE__ */ unpack(3, 3, "1g)m(kdd(m(|)xcn(oygidaebbcaaaabebaaaaaabeadccdaccbcbaaabcabccbaabebaaaabccbbebbedccdccd"),
  "neutral 8": /* @__PURE__ */ unpack(3, 4, "1a)i(ehas)l{)irejnmjecbbgfccdcaacfihgafgafifcabebabeafgbbgfcaaaaaaaaaaaaaabinqpohcaabg"),
  "neutral 6.5": /* @__PURE__ */ unpack(3, 2, "0g(}uifjz|jdaaaabbcdccbacaaaaacbacbaaacbcabaaabcbaaaaaaaaaaabebaaaaaaaaaaaaaaaaaaaa"),
  "neutral 5": /* @__PURE__ */ unpack(3, 2, ".q(gcajhhhbabcabaabcbcbcaaaaaaaacbaaaaaacbcbaabcabcbacbaacbcbacbcbacbcbacbcbcbacbcb"),
  "neutral 3.5": /* @__PURE__ */ unpack(3, 1, "+}kkigecaaaacaaabaaabaaabacaaaaaaaaabcaaaaaabaaabaabaaabaabaabaaabaaabaaaabaaaabaa"),
  "black 2": /* @__PURE__ */ unpack(3, 1, ")ecaccacaaaaabaaaaaaabaaaaaaaaaaaaaaabaaaaaaaaaaaaaaaaaaaaaaaaabaaaaaaaaaaaaaaaaaa"),
};
