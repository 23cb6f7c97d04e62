// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Reflectance of the 24-patch chart of ISO 17321-1, in the order of the table, which numbers them. Source: Ohta 1997. */
export const CHART_24 = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 81),
  "reflectances": [
    /* @__PURE__ */ unpack(3, 2, "*ggccadfbdcbcacacbcacaacaabebcbabacbeeagbcbadbaaaaacbeccaacaaedcaccbegideflkddr(jck"),
    /* @__PURE__ */ unpack(3, 2, "-{(eicfrjfaaaccceaeeaaddfbeielrpakqidjbguwwobjnlhjddadagabcccgecdccbercgfhdnmger(viw"),
    /* @__PURE__ */ unpack(3, 2, ".q(uwsez|thjbadcdbbbadbcbcabcbabgeaebcdbcaccabcaaabacbcacbacaacacbcbcaaaaedaaedceea"),
    /* @__PURE__ */ unpack(3, 2, "*gcbacdccbcaaacaabcbacbcaiiqmcntnlhdcaekedabdccececdbbcacaeekmokscbpthhjbdlmaehzii"),
    /* @__PURE__ */ unpack(3, 2, "/g(}(c(csz(r|tndbdbdabbafdibaadhhfcimimedhckgiebdaadhdeigqokmaahjhlnbfbbdaccdcjgegjzmk"),
    /* @__PURE__ */ unpack(3, 2, ".k(qwogxzpfbaccceggoekblnnlhhbfddfddfbaaabacabiiiggcebccaececebabadfdadkbmgaacbjpgc"),
    /* @__PURE__ */ unpack(3, 2, "*qcbaaabcbcaaaaaaaacaaaacacciekiiiceekichhjnjjbdbdaabbeafbaaccabaabcfagdcfhkgen(lke"),
    /* @__PURE__ */ unpack(3, 2, "-s(mssgjxnjdeabdlpjhfhhddiggceagggecbbcacgaebabbaaccececbcddfddcceccaeacciggggclbgg"),
    /* @__PURE__ */ unpack(3, 3, "-myglajmaebgafefgdgfabccccbdacacedcahacgsmgjrrpfaikbgcccdaeacbbgdbbecdededfoablx(ic"),
    /* @__PURE__ */ unpack(3, 2, "-w}medllhbvafabaaaecccccaebeacbacaccaabbaaccceeggccbbbcbbccagcedgbcdbccddclebcp(beo"),
    /* @__PURE__ */ unpack(3, 2, "*webbcabacaacaccaeegggkmqyscdxx|tjnhbdbdbfaddeiigggaaccccgecccbdcfdhbaeiigbebcpzfi"),
    /* @__PURE__ */ unpack(3, 2, "+accbabbcaaacbcaaagagcabcaegoosqmcnlnlfdhdaffbbbaaabaacaddaaecbbcabdaaebbalkgel(pkm"),
    /* @__PURE__ */ unpack(3, 2, "+syggidbbfcicicnxvtpnjackikigiceeaccaaaacbcaabccbaacbcbacbacbaacacabcccaeggcgeddia"),
    /* @__PURE__ */ unpack(3, 2, "*ucaabacbaccbcaccaecgeagemkqmhv~xpjlbdcbcaeacegggeecaaacaacaebcacadbcbabibcebafaba"),
    /* @__PURE__ */ unpack(3, 3, "*oaaabededebaaaabededccdebaaaaaaacbaacaacceieiafnzbnckkcdiacgbhgabaaaaifbbaighl(h(yg"),
    /* @__PURE__ */ unpack(3, 2, "*sbedcaabcacbacaaegiquqskcfjbfdjhfnfaadabdaddbabbcaaabccfbbcaefeacfcdbiddbdcmaf(zkm"),
    /* @__PURE__ */ unpack(3, 2, ".{(s{ym(b(ftlnjhbdbbccaadecgccbdaaigigbdbeimoookouokhhttphllhddbcfcbabbbagadddckah(xqo"),
    /* @__PURE__ */ unpack(3, 2, "-g(eomclnndgbiiabagefjllnlhjfhbdccagaggggegecbeaccacaaaacaabcdaacbacbgacciemcicnlbd"),
    /* @__PURE__ */ unpack(3, 3, "1g)m(kdd(m(|)xcn(oygidaebbcaaaabebaaaaaabeadccdaccbcbaaabcabccbaabebaaaabccbbebbedccdccd"),
    /* @__PURE__ */ unpack(3, 4, "1a)i(ehas)l{)irejnmjecbbgfccdcaacfihgafgafifcabebabeafgbbgfcaaaaaaaaaaaaaabinqpohcaabg"),
    /* @__PURE__ */ unpack(3, 2, "0g(}uifjz|jdaaaabbcdccbacaaaaacbacbaaacbcabaaabcbaaaaaaaaaaabebaaaaaaaaaaaaaaaaaaaa"),
    /* @__PURE__ */ unpack(3, 2, ".q(gcajhhhbabcabaabcbcbcaaaaaaaacbaaaaaacbcbaabcabcbacbaacbcbacbcbacbcbacbcbcbacbcb"),
    /* @__PURE__ */ unpack(3, 1, "+}kkigecaaaacaaabaaabaaabacaaaaaaaaabcaaaaaabaaabaabaaabaabaabaaabaaabaaaabaaaabaa"),
    /* @__PURE__ */ unpack(3, 1, ")ecaccacaaaaabaaaaaaabaaaaaaaaaaaaaaabaaaaaaaaaaaaaaaaaaaaaaaaabaaaaaaaaaaaaaaaaaa"),
  ],
};
